import type * as PdfLib from 'pdf-lib';
import { optionalPackage } from './optional-package.ts';

/** The package that reads and amends a PDF. Throws a Refusal `print-package-missing`. */
export const loadPdfLib = (): Promise<typeof PdfLib> => optionalPackage('pdf-lib', () => import('pdf-lib'));
