/** Addresses of the planner and the calculators with something filled in. */

import { FIELDS, type Inputs } from '../planner/inputs';
import { initialValues, writeAddress } from '../state/address';

/** The planner with some of its inputs set; the rest as they stand on a blank form. */
export function plannerHref(inputs: Partial<Inputs>): string {
  return `/plan/${writeAddress({ ...initialValues(FIELDS), ...inputs }, FIELDS)}`;
}

/** Another calculator with inputs set. */
export function calculatorHref(slug: string, inputs: Readonly<Record<string, string>>): string {
  const names = Object.keys(inputs);
  const fields = names.map((name) => ({ name, initial: '' }));
  return `/calculators/${slug}/${writeAddress(inputs, fields)}`;
}
