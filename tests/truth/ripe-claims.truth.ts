import { expect, test } from 'vitest';
import { brier, calibration, judgedClaims } from './ripe-claims.ts';
import { SIGNS_SETTINGS } from './signs-settings.ts';

/** Seeds 1 to this. TRUTH_GARDENS=50 tries the report out. */
const GARDENS = Math.min(500, Number(process.env.TRUTH_GARDENS ?? 500));
/** A claim may be off by one in ten. */
const MOST_OFF = 0.1;
/** Fewer claims than this are told and not judged. */
const FEWEST = 200;

/** What is printed as 6, 7 and 8 of ten; the last is where a cap of 8 holds claims back. */
const PRINTED = [
  { as: '6', low: 0.55, high: 0.65 },
  { as: '7', low: 0.65, high: 0.75 },
  { as: '8', low: 0.75, high: 0.85 },
] as const;
const CAPPED = { as: '8, held back', low: 0.85, high: 1.01 } as const;

console.log(
  '\nClaims of so many in ten that a hanging fruit is ripe, and how many in ten were (standard error between gardens).',
);

test.each(SIGNS_SETTINGS)('claims come true within one in ten: $name', (setting) => {
  const { ours, product, base } = judgedClaims(setting, GARDENS);
  console.log(
    `\n${setting.name} (${setting.model}); ${GARDENS} gardens; of ten cut, ${(10 * base).toFixed(1)} were ripe`,
  );
  console.log(
    `  mean square of claim less truth: ours ${brier(ours).toFixed(3)}, product ${brier(product).toFixed(3)}`,
  );
  const off: string[] = [];
  for (const [name, claims] of [
    ['ours', ours],
    ['product', product],
  ] as const) {
    for (const { as, low, high } of [...PRINTED, CAPPED]) {
      const found = calibration(claims, low, high);
      if (found === null) continue;
      const [said, held, se] = [found.said, found.held, found.se].map((one) => (10 * one).toFixed(2));
      console.log(
        `  ${name.padEnd(8)} ${as.padEnd(13)} ${String(found.claims).padStart(5)} claims of ${said}: ${held} (${se})`,
      );
      const claimed = as === CAPPED.as ? 0.8 : Number(as) / 10;
      // What is held back at 8 may come true more often than it says; never less.
      const wrong = as === CAPPED.as ? claimed - found.held > MOST_OFF : Math.abs(found.held - claimed) > MOST_OFF;
      if (name === 'ours' && wrong && found.claims >= FEWEST) off.push(`${as}: ${held}`);
    }
  }
  const [bold, boldProduct] = [calibration(ours, 0.85, 1.01), calibration(product, 0.85, 1.01)];
  const over = (one: typeof bold) => (one ? one.said - one.held : 0);
  console.log(
    `  said above 8.5 less held: ours ${(10 * over(bold)).toFixed(2)}, product ${(10 * over(boldProduct)).toFixed(2)}`,
  );
  if (setting.model === 'broken') {
    console.log(`  broken on purpose; off by more than one in ten: ${off.join(', ') || 'none'}`);
    return;
  }
  expect(off).toEqual([]);
  expect(over(bold)).toBeLessThan(over(boldProduct));
});
