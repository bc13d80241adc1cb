/** What a row of exercises is made from, as the address has it: `seed`, `kinds`, `level`, `at`; a sheet's `count` and `key`. */

import { EXERCISE_KINDS, LEVELS, type ExerciseKind, type Level } from '../../core/practice/types';
import type { AddressField, Values } from '../state/address';

export const PRACTICE_NAMES = ['seed', 'kinds', 'level', 'at', 'count', 'key', 'units'] as const;
export type PracticeName = (typeof PRACTICE_NAMES)[number];
export type PracticeInputs = Values<PracticeName>;

const INITIAL: Record<PracticeName, string> = {
  seed: '1',
  kinds: '',
  level: '1',
  at: '1',
  count: '8',
  key: '',
  units: '',
};

export const PRACTICE_FIELDS: readonly AddressField<PracticeName>[] = PRACTICE_NAMES.map(
  (name) => ({
    name,
    initial: INITIAL[name],
    ...(name === 'level' ? { choices: LEVELS.map(String) } : {}),
    ...(name === 'key' ? { choices: ['yes'] } : {}),
    ...(name === 'units' ? { choices: ['mm', 'in'] } : {}),
  }),
);

/** A whole number from 0 to a billion; null for anything else. */
export function readSeed(text: string): number | null {
  const value = Number(text.trim());
  return /^\d{1,10}$/.test(text.trim()) && value <= 1e9 ? value : null;
}

/** Kinds by their words, unknown ones left out; none means all. */
export function readKinds(text: string): ExerciseKind[] {
  const known = text
    .split(',')
    .flatMap((word) => EXERCISE_KINDS.find((kind) => kind === word) ?? []);
  return known.length > 0 ? [...new Set(known)] : [...EXERCISE_KINDS];
}

export function readLevel(text: string): Level {
  return LEVELS.find((level) => String(level) === text) ?? 1;
}

const bounded = (text: string, most: number, usual: number) => {
  const value = Math.floor(Number(text));
  return Number.isFinite(value) && value >= 1 ? Math.min(most, value) : usual;
};

export const readAt = (text: string) => bounded(text, 1000, 1);
export const readCount = (text: string) => bounded(text, 40, 8);

export function practiceHref(
  page: '/practice/' | '/practice/sheet/',
  { seed, kinds, level, count, key }: Partial<PracticeInputs>,
): string {
  const query = new URLSearchParams({
    ...(seed && { seed }),
    ...(kinds && { kinds }),
    ...(level && level !== '1' && { level }),
    ...(count && count !== '8' && { count }),
    ...(key && { key }),
  }).toString();
  return query ? `${page}?${query}` : page;
}
