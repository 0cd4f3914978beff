import type { Day } from '../../day.ts';
import type { Crop, Garden, Season, Variety } from '../../garden/garden.ts';
import { type HeatSettings, heatSettingsOf } from '../../garden/weather-settings.ts';
import type { Bases } from '../bases.ts';
import { heatRecord } from '../weather/heat-record.ts';
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

/** How long each variety of a season took to ripen. */
export function seasonMaturity(garden: Garden, season: Season, today: Day, bases: Bases): SeasonMaturity {
  const station = garden.stations.find(({ id }) => id === garden.about.weather?.station) ?? null;
  const hasRegister = ({ id }: Variety): boolean =>
    season.plantings.some(({ variety, fruits }) => variety?.id === id && fruits.length > 0);
  const grown = garden.varieties.filter(hasRegister);
  const crops = [...new Map(grown.map(({ crop }) => [crop.id, crop])).values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    season,
    crops: crops.map((crop) => {
      const heat_settings = cropHeat(garden, crop);
      const heat = station && heatRecord(station, heat_settings);
      return {
        crop,
        heat_settings,
        varieties: grown
          .filter((variety) => variety.crop.id === crop.id)
          .map((variety) => varietyMaturity({ season, today, bases, heat }, variety)),
      };
    }),
  };
}

function cropHeat({ about }: Garden, { heat }: Crop): HeatSettings {
  const own = heatSettingsOf(about);
  return heat ? { method: own.method, base_c: heat.base_c, cap_c: heat.cap_c } : own;
}
