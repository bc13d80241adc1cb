/** Reads a calculator's fields, and collects why one of them cannot be read. Pure. */

import type { MaterialId } from '../../core/material/material';
import type { Problem } from '../../core/outcome';
import { readLength } from '../fields/readLength';
import { readPlain } from '../fields/readNumber';
import { readTorque } from '../fields/readTorque';
import type { Unit } from '../words/format';
import type { FieldProblem, ValuesOf } from './calculator';

const DEGREES = ['°', 'deg', 'degrees'];
const THREADS = ['p', 'thread', 'threads', 'pitch', 'pitches'];

/** Longest length anybody could mean here, mm. */
const ABSURD = 1000;

export class Reader<Name extends string> {
  readonly problems: FieldProblem<Name>[] = [];

  constructor(
    readonly values: ValuesOf<Name>,
    readonly unit: Unit,
  ) {}

  complain(field: Name, problem: Problem, missing = false): undefined {
    const data = { typed: this.text(field), ...problem.data };
    this.problems.push({ field, missing, problem: { ...problem, field, data } });
    return undefined;
  }

  text(name: Name): string {
    return (this.values as Record<Name, string>)[name].trim();
  }

  /** Complains that a needed input is still empty. */
  needed<T>(name: Name, value: T | undefined): T | undefined {
    return this.text(name) === '' ? this.complain(name, { code: 'missing' }, true) : value;
  }

  private typed<T>(name: Name, code: string, read: (text: string) => T | null): T | undefined {
    const text = this.text(name);
    return text === '' ? undefined : (read(text) ?? this.complain(name, { code }));
  }

  /** A length in mm, above 0 unless `least` says that 0 will do. */
  length(name: Name, least: 'above zero' | 'zero' = 'above zero'): number | undefined {
    const mm = this.typed(name, 'not-a-length', (text) => readLength(text, this.unit)?.mm ?? null);
    if (mm === undefined) return undefined;
    if (mm < 0 || (mm === 0 && least === 'above zero')) {
      return this.complain(name, { code: least === 'zero' ? 'below-zero' : 'not-above-zero' });
    }
    return mm > ABSURD ? this.complain(name, { code: 'absurd-length' }) : mm;
  }

  torque(name: Name): number | undefined {
    const torque = this.typed(name, 'not-a-torque', readTorque);
    return torque !== undefined && torque <= 0
      ? this.complain(name, { code: 'not-above-zero' })
      : torque;
  }

  angle(name: Name, range: { min: number; max: number }): number | undefined {
    return this.ranged(name, ['not-an-angle', 'angle-outside'], DEGREES, range);
  }

  /** A count of threads; halves and quarters are fine. */
  threads(name: Name, range: { min: number; max: number }): number | undefined {
    return this.ranged(name, ['not-a-count', 'count-outside'], THREADS, range);
  }

  private ranged(
    name: Name,
    [unreadable, outside]: [string, string],
    units: readonly string[],
    { min, max }: { min: number; max: number },
  ): number | undefined {
    const value = this.typed(name, unreadable, (text) => readPlain(text, units));
    if (value === undefined) return undefined;
    const data = { min: String(min), max: String(max) };
    return value < min || value > max ? this.complain(name, { code: outside, data }) : value;
  }

  choice<T extends string>(name: Name): T | undefined {
    return (this.text(name) || undefined) as T | undefined;
  }

  material(name: Name): MaterialId | undefined {
    return this.choice<MaterialId>(name);
  }

  /** Lays the core's problems at the fields they speak of. */
  lay(problems: readonly Problem[], fieldOf: (problem: Problem) => Name): void {
    for (const problem of problems) {
      const field = fieldOf(problem);
      this.problems.push({ field, missing: false, whole: true, problem: { ...problem, field } });
    }
  }
}
