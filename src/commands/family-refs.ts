/** Families as practice wants them; loads no paint. */
import { FAMILIES } from '../drills/families.js';
import type { FamilyRef } from '../practice/index.js';

/** Families in the order they are taught. */
export const FAMILY_REFS: readonly FamilyRef[] = FAMILIES.map(({ id, name, alike }) => ({
  id,
  title: name,
  lookAlike: alike,
}));
