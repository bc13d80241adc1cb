/**
 * The worked example shown before anything is typed: a cover of a pump housing at Copperfell
 * Works, on the 30-taper machine. It leads nobody to drill: it is marked and goes at the first input.
 */

import { initialValues, writeAddress } from '../state/address';
import { TEXT } from '../words/en/planner';
import { LANGUAGE } from '../words/en/site';
import { FIELDS, type Inputs } from './inputs';

export const EXAMPLE: Inputs = {
  ...initialValues(FIELDS),
  thread: 'M8x1.25-6H',
  hole: 'blind',
  depth: '16',
  limit: '22',
  at: 'shoulder',
  material: 'stainless-austenitic',
  torque: '30',
};

/** What stands on the example's card. */
export const EXAMPLE_CARD: Partial<Inputs> = {
  job: '4471',
  part: TEXT.examplePart,
  operation: '30',
  machine: 'VMC-B',
  holes: '6',
};

/** Where the job card of these inputs is. */
export function cardAddress(values: Inputs): string {
  return `${LANGUAGE.home}/plan/card/${writeAddress(values, FIELDS)}`;
}
