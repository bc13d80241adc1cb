/** What the cost calculator asks: one plan, and what differs in another. */

import { UNITS_FIELD, type Inputs } from '../calculator';

export const SHARED = [
  'rate',
  'holes',
  'setup',
  'gauge-seconds',
  'gauge-every',
  'gauge-rate',
] as const;

export const PLAN = [
  'seconds',
  'tap',
  'tap-life',
  'drill',
  'drill-life',
  'breaks',
  'break-cost',
] as const;

export const OTHER = [
  'b-seconds',
  'b-tap',
  'b-tap-life',
  'b-drill',
  'b-drill-life',
  'b-breaks',
  'b-break-cost',
] as const;

export type PlanName = (typeof PLAN)[number];
export type Name = (typeof SHARED)[number] | PlanName | (typeof OTHER)[number];

export const INPUTS: Inputs<Name> = {
  fields: [...[...SHARED, ...PLAN, ...OTHER].map((name) => ({ name, initial: '' })), UNITS_FIELD],
  kinds: {},
};
