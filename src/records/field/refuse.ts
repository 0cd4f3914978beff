import { z } from 'zod';

/** What a field says when it refuses a text: read back by src/reading into a problem. */
export interface Refusal {
  readonly code: string;
  readonly hint: string;
}

/** Adds an issue with a stable code and what to type instead, and stops this field. */
export function refuse(context: z.RefinementCtx, code: string, message: string, hint: string): never {
  context.addIssue({ code: 'custom', message, params: { code, hint } satisfies Refusal });
  return z.NEVER;
}
