/** Finds the part of a schema that a path leads to, so that a refusal can say what was expected there. */
import { z } from 'zod';
import type { Path } from './problem.ts';
import { fieldNotes } from './schema/field.ts';

/** The schema without the wrappers that make it optional or change what it gives; stops at a field with a note. */
export const bare = (schema: z.ZodType): z.ZodType => {
  if (fieldNotes.has(schema)) return schema;
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodPrefault || schema instanceof z.ZodDefault) {
    return bare(schema.unwrap() as z.ZodType);
  }
  return schema instanceof z.ZodPipe ? bare(schema.in as z.ZodType) : schema;
};

const next = (schema: z.ZodType, step: string | number): z.ZodType | undefined => {
  if (schema instanceof z.ZodObject) {
    return Object.hasOwn(schema.shape, step) ? (schema.shape[step] as z.ZodType) : undefined;
  }
  if (schema instanceof z.ZodArray) return schema.element as z.ZodType;
  return schema instanceof z.ZodRecord ? (schema.valueType as z.ZodType) : undefined;
};

/** The schema at a path, bare; undefined where the form has nothing. */
export const schemaAt = (root: z.ZodType, path: Path): z.ZodType | undefined => {
  let schema: z.ZodType | undefined = bare(root);
  for (const step of path) {
    const inner: z.ZodType | undefined = schema && next(schema, step);
    schema = inner && bare(inner);
  }
  return schema;
};

/** Keys that a group may have. */
export const keysAt = (root: z.ZodType, path: Path): readonly string[] => {
  const schema = schemaAt(root, path);
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
};
