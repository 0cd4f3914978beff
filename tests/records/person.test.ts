import { describe, expect, test } from 'vitest';
import { personSchema } from '../../src/records/person.ts';

const whole = { id: 'JK', code: 'K4', name: 'Jossamy Kettlewick' };

/** What was read, or the code and field of every refusal. */
function read(typed: Readonly<Record<string, string>>): unknown {
  const result = personSchema.safeParse(typed);
  if (result.success) return result.data;
  return result.error.issues.map((issue) => {
    const params = issue.code === 'custom' ? (issue.params as { code: string }) : issue;
    return `${params.code} ${issue.path.join('.')}`.trim();
  });
}

describe('a person', () => {
  test('needs an id, a code and a name; no agreement is not an agreement', () => {
    expect(read(whole)).toEqual({ ...whole, agreed_on: null, withdrawn_on: null, note: null, entered: {} });
    for (const key of ['id', 'code', 'name'] as const) {
      const { [key]: _, ...rest } = whole;
      expect(read(rest)).toEqual([`invalid_type ${key}`]);
    }
  });

  test('agrees on one exact day', () => {
    expect(read({ ...whole, agreed_on: '2024-03-02', withdrawn_on: '2025-09-01' })).toMatchObject({
      agreed_on: '2024-03-02',
      withdrawn_on: '2025-09-01',
    });
    expect(read({ ...whole, agreed_on: 'about 2024-03-02' })).toEqual(['date-form agreed_on']);
    expect(read({ ...whole, agreed_on: 'yes' })).toEqual(['date-form agreed_on']);
    expect(read({ ...whole, withdrawn_on: '2025-13-01' })).toEqual(['no-such-day withdrawn_on']);
  });

  test('has a code that is an id', () => {
    expect(read({ ...whole, code: 'K 4' })).toEqual(['id-form code']);
    expect(read({ ...whole, code: 'all' })).toEqual(['reserved-id code']);
  });

  test('has no other keys', () => {
    expect(read({ ...whole, telephone: '1' })).toEqual(['unrecognized_keys']);
  });
});
