import nunjucks from 'nunjucks';

interface Compiled {
  readonly text: string;
  /** What the template engine makes of it; null where it cannot. */
  readonly code: object | null;
}

/** Of this process, by file. A book made again after every save is set by the same templates. */
const compiled = new Map<string, Compiled>();

/**
 * Reads templates from folders and compiles a text once, for all environments alike: they must share the given one's
 * settings. A text that cannot be compiled is handed on as it is, so that its fault is told as ever.
 */
export class CompiledTemplates extends nunjucks.FileSystemLoader {
  readonly #compiling: nunjucks.Environment;

  constructor(folders: string[], settings: nunjucks.ConfigureOptions) {
    super(folders);
    this.#compiling = new nunjucks.Environment([], settings);
  }

  override getSource(name: string): nunjucks.LoaderSource {
    const found = super.getSource(name);
    // The types know texts only; the engine takes code as well, which is how it loads what was compiled beforehand.
    const code = found && codeOf(found.path, found.src, this.#compiling);
    return code ? { ...found, src: { type: 'code', obj: code } as unknown as string } : found;
  }
}

function codeOf(path: string, text: string, env: nunjucks.Environment): object | null {
  const before = compiled.get(path);
  if (before?.text === text) return before.code;
  const code = compile(path, text, env);
  compiled.set(path, { text, code });
  return code;
}

function compile(path: string, text: string, env: nunjucks.Environment): object | null {
  try {
    const body = nunjucks.precompileString(text, {
      name: path,
      env,
      // The types say one template; the engine gives a list of them.
      wrapper: (templates) => [templates].flat()[0]?.template ?? '',
    });
    return new Function(body)() as object;
  } catch {
    return null;
  }
}
