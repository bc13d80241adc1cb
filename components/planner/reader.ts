/** Reads the form's fields one by one, and remembers what could not be read. */

import type { Problem } from '../../core/outcome';
import { readHardness } from '../fields/readHardness';
import { readLength } from '../fields/readLength';
import { readPlain } from '../fields/readNumber';
import { readTorque } from '../fields/readTorque';
import type { Unit } from '../words';
import { baseUnit, type InputName, type Inputs } from './inputs';

/** Why a field keeps the form from an answer. `missing`: nothing was entered yet. */
export interface FieldProblem {
  field: InputName;
  problem: Problem;
  missing: boolean;
  /** True when it lies in how several inputs sit together, which typing one of them may yet mend. */
  whole?: boolean;
}

export class Reader {
  readonly problems: FieldProblem[] = [];

  constructor(
    readonly values: Inputs,
    readonly unit: Unit,
  ) {}

  complain(field: InputName, code: string, missing = false): undefined {
    const problem = { code, field, data: { typed: this.values[field] } };
    this.problems.push({ field, missing, problem });
    return undefined;
  }

  private typed<T>(name: InputName, code: string, read: (text: string) => T | null): T | undefined {
    const text = this.values[name].trim();
    return text === '' ? undefined : (read(text) ?? this.complain(name, code));
  }

  length(name: InputName): number | undefined {
    const base = baseUnit(name, this.unit);
    return this.typed(name, 'not-a-length', (text) => readLength(text, base)?.mm ?? null);
  }

  torque(name: InputName): number | undefined {
    return this.typed(name, 'not-a-torque', readTorque);
  }

  hardness(name: InputName) {
    return this.typed(name, 'not-a-hardness', readHardness);
  }

  plain(name: InputName, code: string, units: readonly string[]): number | undefined {
    return this.typed(name, code, (text) => readPlain(text, units));
  }

  yes(name: InputName): boolean {
    return this.values[name] === 'yes';
  }

  needed<T>(name: InputName, value: T | undefined): T | undefined {
    if (this.values[name].trim() === '') this.complain(name, 'missing', true);
    return value;
  }

  /** What was chosen; the address lets nothing else in. */
  chosen<T extends string>(name: InputName): T | undefined {
    return (this.values[name] || undefined) as T | undefined;
  }

  choice<T extends string>(name: InputName): T | undefined {
    return this.needed(name, this.chosen<T>(name));
  }
}
