/** From what was typed to the cost of a hole, for one plan or two. Pure. */

import { holeCost, type CostInput, type HoleCost } from '../../../core/job/cost';
import type { Problem } from '../../../core/outcome';
import { readPlain } from '../../fields/readNumber';
import type { Unit } from '../../words/format';
import type { Attempt, ValuesOf } from '../calculator';
import { Reader } from '../reader';
import { OTHER, PLAN, type Name, type PlanName } from './inputs';

export interface CostAnswer {
  input: CostInput;
  cost: HoleCost;
  other: { input: CostInput; cost: HoleCost } | null;
}

const UNITS_TYPED = ['s', 'sec', 'min', 'holes', 'hole', '/h', '€', '$', '£'];

function amount(reader: Reader<Name>, name: Name): number | undefined {
  const text = reader.text(name).replace(/^[€$£]\s*/, '');
  if (text === '') return undefined;
  const value = readPlain(text, UNITS_TYPED);
  return value ?? reader.complain(name, { code: 'not-a-number', data: { example: '25' } });
}

/** Empty fields that cost nothing, and counts that then divide nothing. */
const NOTHING: Partial<Record<Name, number>> = {
  drill: 0,
  'drill-life': 1,
  setup: 0,
  'gauge-seconds': 0,
  'gauge-every': 1,
  'gauge-rate': 0,
};

function needed(reader: Reader<Name>, name: Name): number {
  const nothing = NOTHING[name];
  const value = amount(reader, name);
  return (nothing === undefined ? reader.needed(name, value) : (value ?? nothing)) ?? 0;
}

const FIELDS: Record<PlanName, keyof CostInput> = {
  seconds: 'seconds',
  tap: 'tapPrice',
  'tap-life': 'tapLife',
  drill: 'drillPrice',
  'drill-life': 'drillLife',
  breaks: 'breaksIn',
  'break-cost': 'breakCost',
};

const NAME_OF: Record<keyof CostInput, Name> = {
  seconds: 'seconds',
  machineRate: 'rate',
  gaugeRate: 'gauge-rate',
  tapPrice: 'tap',
  tapLife: 'tap-life',
  drillPrice: 'drill',
  drillLife: 'drill-life',
  gaugeSeconds: 'gauge-seconds',
  gaugeEvery: 'gauge-every',
  setupMinutes: 'setup',
  holes: 'holes',
  breaksIn: 'breaks',
  breakCost: 'break-cost',
};

function inputOf(reader: Reader<Name>): CostInput {
  const at = (name: Name) => needed(reader, name);
  return {
    seconds: at('seconds'),
    machineRate: at('rate'),
    gaugeRate: at('gauge-rate'),
    tapPrice: at('tap'),
    tapLife: at('tap-life'),
    drillPrice: at('drill'),
    drillLife: at('drill-life'),
    gaugeSeconds: at('gauge-seconds'),
    gaugeEvery: at('gauge-every'),
    setupMinutes: at('setup'),
    holes: at('holes'),
    breaksIn: at('breaks'),
    breakCost: at('break-cost'),
  };
}

/** The other plan: the first with what was typed for it; null where nothing was. */
function otherOf(reader: Reader<Name>, input: CostInput): CostInput | null {
  const changed = PLAN.flatMap((name, at): [keyof CostInput, number][] => {
    const value = amount(reader, OTHER[at]!);
    return value === undefined ? [] : [[FIELDS[name], value]];
  });
  return changed.length === 0 ? null : { ...input, ...Object.fromEntries(changed) };
}

const fieldOf = ({ field }: Problem): Name => NAME_OF[field as keyof CostInput] ?? 'rate';

function otherField(problem: Problem): Name {
  const name = `b-${fieldOf(problem)}` as Name;
  return (OTHER as readonly Name[]).includes(name) ? name : fieldOf(problem);
}

export function attempt(values: ValuesOf<Name>, unit: Unit): Attempt<Name, CostAnswer> {
  const reader = new Reader<Name>(values, unit);
  const input = inputOf(reader);
  const changed = otherOf(reader, input);
  const { problems } = reader;
  if (problems.length > 0) return { answer: null, problems };
  const cost = holeCost(input);
  const other = changed && holeCost(changed);
  if (!cost.ok) reader.lay(cost.problems, fieldOf);
  else if (other && !other.ok) reader.lay(other.problems, otherField);
  if (!cost.ok || (other && !other.ok)) return { answer: null, problems };
  return {
    answer: {
      input,
      cost: cost.value,
      other: changed && other?.ok ? { input: changed, cost: other.value } : null,
    },
    problems,
  };
}
