import { Refusal } from '../disk/refusal.ts';

/** A package that only printing needs, loaded now. Throws a Refusal `print-package-missing` when it was not installed. */
export async function optionalPackage<T>(name: string, load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (error) {
    if ((error as { code?: unknown }).code !== 'ERR_MODULE_NOT_FOUND') throw error;
    throw new Refusal(
      'print-package-missing',
      `printing takes the package ${name}, and it was not installed with groundspot`,
      'Install groundspot again with its optional packages (npm install --include=optional), or print the website from any browser.',
      error,
    );
  }
}
