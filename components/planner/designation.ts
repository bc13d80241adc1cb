/** A material typed as the drawing writes it chooses the group that is planned with. */

import { readMaterial } from '../../core';

/** What a typed designation changes: an unknown one leaves no group standing that it may not belong to. */
export function designationChanges(designation: string): {
  designation: string;
  material?: string;
} {
  if (designation.trim() === '') return { designation };
  const read = readMaterial(designation);
  return { designation, material: read.ok ? read.value.id : '' };
}
