import { z } from 'zod';
import { metaOf } from '../records/field/record.ts';
import type { TreePath } from './source.ts';

type Shape = Readonly<Record<string, z.core.$ZodType>>;

/** The fields a schema knows at a path; empty where it holds no map. */
export function shapeAt(schema: z.core.$ZodType, path: TreePath): Shape {
  let node: z.core.$ZodType | undefined = unwrap(schema);
  for (const step of path) {
    if (node instanceof z.ZodArray) node = unwrap(node.element);
    else if (node instanceof z.ZodObject) node = unwrap((node.shape as Shape)[String(step)]);
    else return {};
  }
  return node instanceof z.ZodObject ? (node.shape as Shape) : {};
}

/** The printed heading of a field, where it has one. */
export function titleOf(field: z.core.$ZodType | undefined): string | null {
  const title = field && metaOf(field)?.title;
  return typeof title === 'string' ? title : null;
}

function unwrap(schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined {
  if (schema instanceof z.ZodOptional) return unwrap(schema.unwrap());
  if (schema instanceof z.ZodPipe) return unwrap(schema.in);
  return schema;
}
