import { z } from 'zod';
import { refuse } from './refuse.ts';

/** A number as its keeper wrote it: measured, reckoned ("about 12"), or a trace of rain. */
export interface Amount {
  readonly value: number;
  readonly entered: 'exact' | 'about' | 'trace';
}

export interface AmountRule {
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
  /** Whether "about" may stand before the number; default true. */
  readonly about?: boolean;
  readonly trace?: boolean;
}

const PLAIN = /^[+-]?(\d+(\.\d*)?|\.\d+)$/;
const DECIMAL_COMMA = /^(about )?[+-]?\d+,\d+$/;
const WITH_UNIT = /^(about )?([+-]?\d+(?:[.,]\d+)?)\s*([a-zA-Z°"'²%/]+2?)$/;

/** What a field of numbers tells of itself. */
export interface AmountMeta {
  readonly number: AmountRule;
}

/** Reads a number as people type it; every way of getting it wrong has its own code. */
export const amount = (rule: AmountRule) =>
  z
    .string()
    .transform((text, context): Amount => readAmount(text, context, rule))
    .meta({ number: rule } satisfies AmountMeta);

function readAmount(text: string, context: z.RefinementCtx, rule: AmountRule): Amount {
  const trimmed = text.trim();
  if (rule.trace && trimmed === 'trace') return { value: 0, entered: 'trace' };
  const about = trimmed.startsWith('about ');
  const digits = about ? trimmed.slice('about '.length).trim() : trimmed;
  if (!PLAIN.test(digits)) return refuseText(context, trimmed, rule);
  if (about && rule.about === false) {
    return refuse(context, 'about-not-allowed', 'this number has to be exact', `write ${digits}`);
  }
  return checkBounds(context, { value: Number(digits), entered: about ? 'about' : 'exact' }, rule);
}

function refuseText(context: z.RefinementCtx, text: string, rule: AmountRule): never {
  if (DECIMAL_COMMA.test(text)) {
    return refuse(context, 'decimal-comma', `"${text}" has a decimal comma`, `write ${text.replace(',', '.')}`);
  }
  const unit = WITH_UNIT.exec(text);
  if (unit) {
    const bare = `${unit[1] ?? ''}${unit[2]?.replace(',', '.')}`;
    return refuse(
      context,
      'unit-in-value',
      `"${text}" has its unit in the value`,
      `write ${bare}; the unit belongs in the key`,
    );
  }
  const forms = [
    rule.whole ? '12' : '6.4',
    ...(rule.about === false ? [] : ['about 6']),
    ...(rule.trace ? ['trace'] : []),
  ];
  return refuse(
    context,
    'not-a-number',
    `"${text}" is not a number`,
    `write it like ${forms.join(' or ')}; leave it blank when nobody looked`,
  );
}

function checkBounds(context: z.RefinementCtx, found: Amount, rule: AmountRule): Amount {
  if (rule.whole && !Number.isInteger(found.value)) {
    return refuse(context, 'not-whole', `${found.value} is not a whole number`, 'write a count, like 3');
  }
  if (found.value < rule.min || found.value > rule.max) {
    return refuse(
      context,
      'out-of-range',
      `${found.value} is outside ${rule.min} to ${rule.max}`,
      'check the number and the unit in the key',
    );
  }
  return found;
}
