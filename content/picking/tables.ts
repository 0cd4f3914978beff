import { column, type Table } from '../../src/book/table.ts';
import type { CropModel } from './crop-model.ts';
import { ENDINGS } from './places.ts';
import type { SeasonShares } from './shares.ts';

export const placesTable = (crops: readonly CropModel[]): Table => ({
  id: 'picking-places',
  title: 'Fruit laid by: where, how it ended, and after how many days',
  columns: [
    column('crop', 'Crop'),
    column('place', 'Kept in'),
    column('fruits', 'Fruits', 'fruits'),
    ...ENDINGS.map((ended) => column(ended.replaceAll('-', '_'), ended.replaceAll('-', ' '), 'fruits')),
    column('days_least', 'Fewest days', 'days'),
    column('days_most', 'Most days', 'days'),
  ],
  rows: crops.flatMap(({ id, places }) =>
    places.map(({ place, fruits, endings, days }) => [
      id,
      place,
      fruits,
      ...endings.map(({ count }) => count),
      days?.least ?? null,
      days?.most ?? null,
    ]),
  ),
});

export const stillSoundTable = (crops: readonly CropModel[]): Table => ({
  id: 'picking-still-sound',
  title: 'Fruit laid by and still sound, by days after picking',
  columns: [
    column('crop', 'Crop'),
    column('after_days', 'Days after picking', 'days'),
    column('sound', 'Still sound', 'fruits'),
    column('watched', 'Under watch', 'fruits'),
    column('of_ten', 'Of ten', 'of_ten'),
  ],
  rows: crops.flatMap(({ id, still_sound }) =>
    still_sound.map(({ after_days, sound, watched, of_ten }) => [id, after_days, sound.value, watched, of_ten.value]),
  ),
});

export const sharesTable = ({ label, slug, lines }: SeasonShares): Table => ({
  id: `picking-${slug.toLowerCase()}-shares`,
  title: `Where the fruit of ${label} went`,
  columns: [column('to', 'To'), column('fruits', 'Fruits', 'fruits'), column('mass_kg', 'Mass', 'kg')],
  rows: lines.map(({ to, fruits, kg }) => [to ?? 'all', fruits.value, kg.value]),
});
