/** The broken-tap finder: complete, without dead ends, and the same whatever the order of answers. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SOURCES } from '../../../core';
import { CAUSE_IDS, causeSource, type CauseId } from '../../../core/diagnose/causes';
import { answersOf, CHECK_IDS, CHECKS, type CheckAnswers } from '../../../core/diagnose/checks';
import {
  CANNOT_CHECK,
  diagnose,
  type CheckAnswer,
  type Diagnosis,
} from '../../../core/diagnose/finder';
import {
  SYMPTOM_GROUPS,
  SYMPTOM_IDS,
  SYMPTOMS,
  type Symptom,
  type SymptomId,
} from '../../../core/diagnose/symptoms';
import { chance } from '../../../core/diagnose/weigh';

function found(symptom: SymptomId, answers: CheckAnswer[], ruledOut: CauseId[] = []): Diagnosis {
  const outcome = diagnose({ symptom, answers, ruledOut });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const symptom = (id: SymptomId): Symptom => SYMPTOMS[id];

const PAIRS = SYMPTOM_IDS.flatMap((id) => symptom(id).causes.map((cause) => [id, cause] as const));

/** Walks the finder as somebody would at whose machine `cause` is the truth. */
function walk(id: SymptomId, cause: CauseId): { end: Diagnosis; asked: number } {
  const answers: CheckAnswer[] = [];
  for (;;) {
    const now = found(id, answers);
    if (now.next === null) return { end: now, asked: answers.length };
    const check = now.next;
    const best = [...answersOf(check)].sort(
      (a, b) => chance(cause, check, b) - chance(cause, check, a),
    )[0]!;
    answers.push({ check, answer: best });
  }
}

describe('the matrix', () => {
  test('has every symptom in one group of the list', () => {
    expect(Object.values(SYMPTOM_GROUPS).flat().sort()).toEqual([...SYMPTOM_IDS].sort());
    expect(SYMPTOM_IDS).toHaveLength(24);
  });

  test('uses every cause and every check', () => {
    const causes = new Set(SYMPTOM_IDS.flatMap((id) => symptom(id).causes));
    const checks = new Set(SYMPTOM_IDS.flatMap((id) => symptom(id).checks));
    expect(CAUSE_IDS.filter((id) => !causes.has(id))).toEqual([]);
    expect(CHECK_IDS.filter((id) => !checks.has(id))).toEqual([]);
  });

  test.each(PAIRS)('%s: %s has a check that names it, and a source', (id, cause) => {
    const named = symptom(id).checks.some((check) =>
      Object.values(CHECKS[check] as CheckAnswers).some(
        (causes) => causes !== 'rest' && causes.includes(cause),
      ),
    );
    expect(named).toBe(true);
    expect(SOURCES[causeSource(cause)]).toBeDefined();
  });

  test.each(CHECK_IDS)('%s has at least two answers, and none for “cannot”', (check) => {
    expect(answersOf(check).length).toBeGreaterThanOrEqual(2);
    expect(answersOf(check)).not.toContain(CANNOT_CHECK);
  });

  test('every check asked of a symptom can tell two of its causes apart', () => {
    for (const id of SYMPTOM_IDS) {
      const { causes, checks } = symptom(id);
      for (const check of checks) {
        const patterns = causes.map((cause) =>
          answersOf(check)
            .map((said) => chance(cause, check, said).toFixed(6))
            .join(),
        );
        expect(new Set(patterns).size, `${id}: ${check}`).toBeGreaterThan(1);
      }
    }
  });
});

describe('the finder', () => {
  test.each(PAIRS)('%s: whose cause is %s is led to it', (id, cause) => {
    const { end } = walk(id, cause);
    expect(end.ranked[0]?.cause).toBe(cause);
    expect(end.settled).toBe(true);
  });

  test.each(SYMPTOM_IDS)('%s: with nothing to check it still ends in a cause to try', (id) => {
    const cannot = symptom(id).checks.map((check) => ({ check, answer: CANNOT_CHECK }));
    const { ranked, next, settled } = found(id, cannot);
    expect(next).toBeNull();
    expect(settled).toBe(true);
    expect(ranked.map(({ cause }) => cause)).toEqual(symptom(id).causes);
  });

  test.each(SYMPTOM_IDS)('%s: trying one change after another runs through all causes', (id) => {
    const tried: CauseId[] = [];
    for (const _ of symptom(id).causes) {
      const first = found(id, [], tried).ranked[0]?.cause;
      expect(first).toBeDefined();
      tried.push(first!);
    }
    expect(new Set(tried)).toEqual(new Set(symptom(id).causes));
    expect(found(id, [], tried)).toMatchObject({ ranked: [], next: null });
  });

  const walkOfAnswers = fc.constantFrom(...SYMPTOM_IDS).chain((id) =>
    fc
      .tuple(
        ...symptom(id).checks.map((check) =>
          fc.option(
            fc.constantFrom(...answersOf(check), CANNOT_CHECK).map((answer) => ({ check, answer })),
            { nil: undefined },
          ),
        ),
      )
      .chain((given) => {
        const answers = given.filter((each) => each !== undefined);
        return fc.record({
          id: fc.constant(id),
          answers: fc.constant(answers),
          shuffled: fc.shuffledSubarray(answers, { minLength: answers.length }),
        });
      }),
  );

  test('gives the same ranking, to the last digit, whatever the order of the answers', () => {
    fc.assert(
      fc.property(walkOfAnswers, ({ id, answers, shuffled }) => {
        expect(found(id, shuffled)).toEqual(found(id, answers));
      }),
      { numRuns: 400 },
    );
  });

  test('shares are a whole, and fall from first to last', () => {
    fc.assert(
      fc.property(walkOfAnswers, ({ id, answers }) => {
        const shares = found(id, answers).ranked.map(({ share }) => share);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        expect([...shares].sort((a, b) => b - a)).toEqual(shares);
      }),
    );
  });

  test('an answer that names a cause never lowers it', () => {
    fc.assert(
      fc.property(walkOfAnswers, ({ id, answers }) => {
        const open = symptom(id).checks.filter(
          (check) => !answers.some((each) => each.check === check),
        );
        for (const check of open) {
          for (const [said, causes] of Object.entries(CHECKS[check] as CheckAnswers)) {
            if (causes === 'rest') continue;
            const before = found(id, answers).ranked;
            const after = found(id, [...answers, { check, answer: said }]).ranked;
            // Where every cause is named, nothing moves.
            for (const cause of causes.filter((each) => symptom(id).causes.includes(each))) {
              const share = (list: typeof before) =>
                list.find((each) => each.cause === cause)?.share ?? 0;
              expect(share(after)).toBeGreaterThanOrEqual(share(before) - 1e-9);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('refuses what it does not know, and two answers to one check', () => {
    const codes = (symptomId: string, answers: object[]) => {
      const outcome = diagnose({
        symptom: symptomId as SymptomId,
        answers: answers as CheckAnswer[],
      });
      return outcome.ok ? [] : outcome.problems.map(({ code }) => code);
    };
    expect(codes('haunted', [])).toEqual(['symptom-unknown']);
    expect(codes('squeal', [{ check: 'tarot', answer: 'death' }])).toEqual(['check-unknown']);
    expect(codes('squeal', [{ check: 'hold', answer: 'perhaps' }])).toEqual(['answer-unknown']);
    expect(
      codes('squeal', [
        { check: 'hold', answer: 'stops' },
        { check: 'hold', answer: 'same' },
      ]),
    ).toEqual(['answered-twice']);
    expect(codes('squeal', [{ check: 'nose', answer: 'shiny' }])).toEqual([]);
  });
});
