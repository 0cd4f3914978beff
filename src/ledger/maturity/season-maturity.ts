import type { Day } from '../../day.ts';
import { cropsOf } from '../../garden/crops-of.ts';
import type { Crop, Garden, Season, Variety } from '../../garden/garden.ts';
import { ownStation } from '../../garden/own-station.ts';
import { type HeatSettings, heatSettingsOf } from '../../garden/weather-settings.ts';
import type { Kept } from '../../kept.ts';
import type { Bases } from '../bases.ts';
import { type HeatBetween, heatRecord } from '../weather/heat-record.ts';
import { type VarietyMaturity, varietyMaturity } from './variety-maturity.ts';

export interface CropMaturity {
  readonly crop: Crop;
  /** The base and cap of the crop where its file has them, else the garden's. */
  readonly heat_settings: HeatSettings;
  /** In the alphabet's order; only varieties with a register. */
  readonly varieties: readonly VarietyMaturity[];
}

export interface SeasonMaturity {
  readonly season: Season;
  /** In the order of their ids; only crops with a register. */
  readonly crops: readonly CropMaturity[];
}

/** How long each variety took to ripen, season by season; the heat of a crop's days is added up once for all of them. */
export function seasonMaturities(garden: Garden, today: Day, bases: Bases, kept: Kept): SeasonMaturity[] {
  const station = ownStation(garden);
  const heats = new Map(
    cropsOf(garden.varieties).map((crop) => {
      const heat_settings = cropHeat(garden, crop);
      return [crop.id, { heat_settings, heat: station && heatRecord(station, heat_settings) }] as const;
    }),
  );
  return garden.seasons.map((season) => seasonMaturity({ garden, today, bases, heats, kept }, season));
}

interface Desk {
  readonly garden: Garden;
  readonly today: Day;
  readonly bases: Bases;
  readonly kept: Kept;
  /** By crop. */
  readonly heats: ReadonlyMap<string, { readonly heat_settings: HeatSettings; readonly heat: HeatBetween | null }>;
}

function seasonMaturity({ garden, today, bases, heats, kept }: Desk, season: Season): SeasonMaturity {
  const hasRegister = ({ id }: Variety): boolean =>
    season.plantings.some(({ variety, fruits }) => variety?.id === id && fruits.length > 0);
  const grown = garden.varieties.filter(hasRegister);
  return {
    season,
    crops: cropsOf(grown).flatMap((crop) => {
      const heat = heats.get(crop.id);
      if (!heat) return [];
      const own = grown.filter((variety) => variety.crop.id === crop.id);
      const varieties = own.map((variety) => varietyMaturity({ season, today, bases, kept, heat: heat.heat }, variety));
      return [{ crop, heat_settings: heat.heat_settings, varieties }];
    }),
  };
}

/** The base and cap of the crop where its file has them, else the garden’s. */
export function cropHeat({ about }: Garden, { heat }: Crop): HeatSettings {
  const own = heatSettingsOf(about);
  return heat ? { method: own.method, base_c: heat.base_c, cap_c: heat.cap_c } : own;
}
