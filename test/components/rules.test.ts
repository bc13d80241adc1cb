/** Each rule of thumb has a case for it and one against, and it is the core that says so. */

import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../components/calculators/catalogue';
import { INPUTS as engagement } from '../../components/calculators/engagement/inputs';
import { INPUTS as chamfer } from '../../components/calculators/chamfer/inputs';
import { INPUTS as drill } from '../../components/calculators/tap-drill/inputs';
import { INPUTS as form } from '../../components/calculators/form-tap-hole/inputs';
import { INPUTS as gauging } from '../../components/calculators/gauging/inputs';
import { INPUTS as hand } from '../../components/calculators/hand-tapping/inputs';
import { INPUTS as limits } from '../../components/calculators/thread-limits/inputs';
import { INPUTS as plating } from '../../components/calculators/plating/inputs';
import { INPUTS as removal } from '../../components/calculators/tap-removal/inputs';
import { INPUTS as speed } from '../../components/calculators/speed-and-cycle/inputs';
import { INPUTS as torque } from '../../components/calculators/torque/inputs';
import { FIELDS } from '../../components/planner/inputs';
import { RULES } from '../../components/rules/rules';
import { CAUTIONS } from '../../components/words/en/cautions';
import { NEVER } from '../../components/words/en/rules/groups';

interface Field {
  name: string;
  choices?: readonly string[];
}

const FIELDS_OF: Record<string, readonly Field[]> = {
  '/plan/': FIELDS,
  '/calculators/engagement/': engagement.fields,
  '/calculators/chamfer/': chamfer.fields,
  '/calculators/tap-drill/': drill.fields,
  '/calculators/form-tap-hole/': form.fields,
  '/calculators/gauging/': gauging.fields,
  '/calculators/hand-tapping/': hand.fields,
  '/calculators/thread-limits/': limits.fields,
  '/calculators/plating/': plating.fields,
  '/calculators/tap-removal/': removal.fields,
  '/calculators/speed-and-cycle/': speed.fields,
  '/calculators/torque/': torque.fields,
};

/** What is wrong with an address: a page without those inputs, or a choice that it does not have. */
function wrongState(href: string): string[] {
  const url = new URL(href, 'https://example.test');
  const fields = FIELDS_OF[url.pathname];
  if (!fields) return [`${url.pathname} is no page with inputs`];
  const typed = [...url.searchParams];
  if (typed.length === 0) return [`${href} sets nothing`];
  return typed.flatMap(([name, value]) => {
    const field = fields.find((each) => each.name === name);
    if (!field) return [`${url.pathname} has no input ${name}`];
    return field.choices && !field.choices.includes(value) ? [`${name} cannot be ${value}`] : [];
  });
}

describe('rules of thumb', () => {
  test('there are enough of them, each with a name of its own', () => {
    expect(RULES.length + NEVER.length).toBeGreaterThanOrEqual(32);
    const ids = [...RULES, ...NEVER].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test.each(RULES)('$id: the core bears it out in one case and not in the other', (rule) => {
    expect(rule.holds.borneOut).toBe(true);
    expect(rule.fails.borneOut).toBe(false);
    expect(rule.holds.text).not.toBe(rule.fails.text);
  });

  test.each(RULES)('$id: numbers came through, and a source stands by it', (rule) => {
    expect(rule.holds.text + rule.fails.text).not.toMatch(/undefined|NaN|null/);
    expect(rule.sources.length).toBeGreaterThan(0);
  });

  test.each(RULES)('$id: both cases open with their state set', ({ holds, fails }) => {
    expect([...wrongState(holds.href), ...wrongState(fails.href)]).toEqual([]);
  });

  test('the check of addresses sees a wrong page, a wrong input and a wrong choice', () => {
    expect(wrongState('/lessons/?x=1')).toHaveLength(1);
    expect(wrongState('/calculators/gauging/?nothing=1')).toHaveLength(1);
    expect(wrongState('/calculators/gauging/?go=sideways')).toHaveLength(1);
    expect(wrongState('/calculators/gauging/')).toHaveLength(1);
  });

  test('what is never right has a caution in place of cases', () => {
    expect(NEVER.filter(({ caution }) => !(caution in CAUTIONS))).toEqual([]);
    expect(NEVER.length).toBe(2);
  });

  test('every calculator that a rule leads to is in the catalogue', () => {
    const slugs = Object.keys(FIELDS_OF).flatMap(
      (path) => /calculators\/(.*)\//.exec(path)?.[1] ?? [],
    );
    expect(slugs.filter((slug) => !CATALOGUE.some((each) => each.slug === slug))).toEqual([]);
    expect(slugs.every((slug) => existsSync(`site/pages/calculators/${slug}.astro`))).toBe(true);
  });
});
