/**
 * The one error the command line catches: a request that cannot be met, said in plain words.
 * `code` is kebab-case and stays stable; `hint` is what the reader can do about it, null when there is nothing.
 */
export class Refusal extends Error {
  readonly code: string;
  readonly hint: string | null;

  constructor(code: string, message: string, hint: string | null = null, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.name = 'Refusal';
    this.code = code;
    this.hint = hint;
  }
}
