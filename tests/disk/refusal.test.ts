import { expect, test } from 'vitest';
import { Refusal } from '../../src/disk/refusal.ts';
import { inPlainWords, systemCode } from '../../src/disk/system-error.ts';
import { systemError } from './broken-disk.ts';

const thrownBy = (work: () => unknown): unknown => {
  try {
    return work();
  } catch (error) {
    return error;
  }
};

test('a system error becomes a refusal that keeps its cause', () => {
  const full = systemError('ENOSPC');
  const said = thrownBy(() =>
    inPlainWords('site', () => {
      throw full;
    }),
  );
  expect(said).toBeInstanceOf(Refusal);
  expect(said).toMatchObject({ code: 'disk-full', cause: full, message: expect.stringContaining('site') });
});

test('a code without words of its own still names itself', () => {
  const said = thrownBy(() =>
    inPlainWords('site', () => {
      throw systemError('EIO');
    }),
  );
  expect(said).toMatchObject({ code: 'disk-error', message: expect.stringContaining('EIO') });
});

test('a fault of ours is not dressed up as the disk saying no', () => {
  const fault = Object.assign(new TypeError('x is not a function'), { code: 'ERR_X' });
  expect(
    thrownBy(() =>
      inPlainWords('site', () => {
        throw fault;
      }),
    ),
  ).toBe(fault);
  expect(systemCode(fault)).toBeNull();
});
