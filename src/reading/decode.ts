import { fileProblem, type Problem } from './problem.ts';

const LARGEST_BYTES = 8_000_000;

interface Decoded {
  readonly text: string | null;
  readonly problems: readonly Problem[];
}

/** The text of a file: UTF-8, with or without a byte order mark; else western European with a warning. */
export function decode(file: string, bytes: Uint8Array): Decoded {
  const { text, problems } = decodeBytes(file, bytes);
  return { text: text?.replace(LONE_RETURN, '\n') ?? null, problems };
}

/** How old machines end a line. One sign for one, so that offsets hold. */
const LONE_RETURN = /\r(?!\n)/g;

function decodeBytes(file: string, bytes: Uint8Array): Decoded {
  const say = (severity: Problem['severity'], code: string, message: string, hint: string): Problem =>
    fileProblem(file, { severity, code, message, hint });
  if (bytes.length > LARGEST_BYTES) {
    return {
      text: null,
      problems: [
        say(
          'error',
          'too-large',
          `the file has ${bytes.length} bytes, more than ${LARGEST_BYTES}`,
          'split it by season or station',
        ),
      ],
    };
  }
  if (bytes.includes(0)) {
    return {
      text: null,
      problems: [say('error', 'not-text', 'the file holds bytes that are not text', 'save it as plain text, UTF-8')],
    };
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), problems: [] };
  } catch {
    const text = new TextDecoder('windows-1252').decode(bytes);
    return {
      text,
      problems: [
        say(
          'warning',
          'not-utf8',
          'the file is not UTF-8; read as western European',
          'save it as UTF-8, and look at the accents',
        ),
      ],
    };
  }
}
