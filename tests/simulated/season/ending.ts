export type Reason = 'ripe' | 'forecast' | 'frost' | 'damage' | 'season-end' | 'other';
export type Condition = 'whole' | 'split' | 'rotten' | 'gnawed';

/** What became of a fruit, as the keeper met it. */
export type Ending =
  | {
      readonly fate: 'picked';
      readonly day: number;
      readonly reason: Reason;
      readonly condition: Condition;
      /** Whether a lot drawn beforehand had named the day, whatever the signs. */
      readonly by_lot: boolean;
      readonly by: string;
    }
  | {
      readonly fate: 'thinned' | 'aborted' | 'lost' | 'left';
      /** The day it was met so. */
      readonly day: number;
      /** The last walk before, on which nothing was amiss; null where there was none. */
      readonly since: number | null;
      readonly lost_to: 'animal' | 'theft' | 'rot' | 'split' | 'frost' | null;
      readonly by: string;
    };

export type Picked = Extract<Ending, { fate: 'picked' }>;
