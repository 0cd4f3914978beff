import type * as PdfLib from 'pdf-lib';

/** How Chromium names an element of the tree of tags: by a count that one printing begins elsewhere than the next. */
const NODE = /^node\d{8}$/;

/** Numbers the named elements of the tree of tags from 1, in their old order, wherever the names stand. */
export function steadyTags(lib: typeof PdfLib, document: PdfLib.PDFDocument): void {
  const objects = document.context.enumerateIndirectObjects().map(([, object]) => object);
  const old = new Set<string>();
  const collect = (name: string): string => {
    old.add(name);
    return name;
  };
  for (const object of objects) renameIn(lib, object, collect);
  const ranks = new Map([...old].sort().map((name, index) => [name, `node${String(index + 1).padStart(8, '0')}`]));
  for (const object of objects) renameIn(lib, object, (name) => ranks.get(name) ?? name);
}

/** Renames the names in an object and in what is written inside it, other objects aside. */
function renameIn(lib: typeof PdfLib, object: PdfLib.PDFObject, rename: (name: string) => string): void {
  const renamed = (value: PdfLib.PDFObject): PdfLib.PDFObject | null => {
    if (value instanceof lib.PDFString && NODE.test(value.asString()))
      return lib.PDFString.of(rename(value.asString()));
    renameIn(lib, value, rename);
    return null;
  };
  if (object instanceof lib.PDFDict) {
    for (const [key, value] of object.entries()) {
      const other = renamed(value);
      if (other) object.set(key, other);
    }
  } else if (object instanceof lib.PDFArray) {
    for (const [index, value] of object.asArray().entries()) {
      const other = renamed(value);
      if (other) object.set(index, other);
    }
  }
}
