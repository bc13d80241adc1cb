/** What to watch because of the part around the hole, and because of what is done to it or asked of it. */

import type { SourceId } from '../sources';
import { SHANK_CLEARANCE, stockTap } from '../tap/reach';
import { STYLES } from '../tap/styles';
import type { Candidate } from './candidates';
import type { WarningCode } from './codes';
import type { Job } from './job';
import { coatingNumbers } from './part-coating';
import { landWidth, needsFlat, slantFacts, slants } from './part-fields';
import { lostIn, reachFor, swallowsLand } from './part-judge';
import type { Warning } from './types';
import { warningLevel } from './warning-levels';

function warn(
  code: WarningCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Warning {
  return { code, numbers, source, level: warningLevel(code, numbers) };
}

/** `{ bore: 1 }`: a number that stands for a word, since warnings carry numbers only. */
const mark = (word: string) => ({ [word]: 1 });

function entryWarnings(job: Job): Warning[] {
  const { entry } = job.request;
  if (!entry || !slants(job.request)) return [];
  const { angle, loss, diameter } = slantFacts(entry.angle, job.major);
  const { flat } = job.datum;
  const sink: Record<string, number> = flat > 0 ? { sink: flat } : {};
  const state = mark(needsFlat(job.request) ? 'bare' : 'flat');
  return [warn('entry-face', { angle, loss, diameter, ...sink, ...state }, 'derived')];
}

function crossingWarnings(job: Job): Warning[] {
  const { crossing } = job.request;
  if (!crossing) return job.request.interrupted ? [warn('interrupted')] : [];
  const { kind, width } = crossing;
  const lost = lostIn(job);
  const left = job.fullThread - lost;
  const taken: Record<string, number> = kind === 'slot' ? {} : { lost, left };
  if (crossing.cut === 'after') {
    const all: Record<string, number> = left < 1e-9 ? mark('gone') : {};
    return [warn('crossing-after', { width, ...mark(kind), ...taken, ...all }, 'derived')];
  }
  const gap: Record<string, number> = kind === 'bore' ? { gap: width / job.pitch } : {};
  const land: Record<string, number> = swallowsLand(job, crossing)
    ? { land: landWidth(job.major, job.flutes) }
    : {};
  return [warn('crossing', { width, ...mark(kind), ...gap, ...taken, ...land }, 'derived')];
}

function reachWarnings(job: Job, tap: Candidate | undefined): Warning[] {
  if (!tap || STYLES[tap.style].process === 'mill') return [];
  const { verdict, needed, have, reduced, source } = reachFor(job, tap);
  if (verdict === 'none') return [warn('tap-reach', { needed, most: have! }, source)];
  if (verdict !== 'long') return [];
  const slim: Record<string, number> = reduced === undefined ? {} : { reduced };
  return [warn('tap-reach', { needed, have: have!, ...slim }, source)];
}

/** The shank of the usual stock tap against the counterbore; where no tap is held, a shank as thick as the thread. */
function tightWarnings(job: Job): Warning[] {
  const { counterbore } = job.request;
  if (!counterbore) return [];
  const usual = stockTap(job.thread)?.usual;
  const shank = usual?.shank ?? job.major;
  const wants = shank + SHANK_CLEARANCE;
  const { diameter } = counterbore;
  if (diameter >= wants - 1e-9) return [];
  return [warn('counterbore-tight', { diameter, shank, wants }, usual?.source)];
}

function laterWarnings(job: Job): Warning[] {
  const later = new Set(job.request.later);
  const found: Warning[] = [];
  if (later.has('harden')) found.push(warn('later-hardening'));
  const coats = (['plate', 'anodise'] as const).filter((each) => later.has(each));
  if (coats.length > 0) {
    const which = Object.assign({}, ...coats.map(mark)) as Record<string, number>;
    found.push(warn('later-coating', { ...which, ...coatingNumbers(job) }, 'derived'));
  }
  if (later.has('weld')) found.push(warn('later-welding'));
  return found;
}

/**
 * Warnings of the part, gravest first: lengths mm, angles degrees. `tap`: the one to speak of.
 * Sources: on each.
 */
export function partWarnings(job: Job, tap: Candidate | undefined): Warning[] {
  const { duty, cored } = job.request;
  return [
    ...(duty ? [warn('duty-not-judged', mark(duty))] : []),
    ...entryWarnings(job),
    ...crossingWarnings(job),
    ...reachWarnings(job, tap),
    ...tightWarnings(job),
    ...(cored ? [warn('cored-hole', job.drill ? { diameter: job.drill.diameter } : {})] : []),
    ...laterWarnings(job),
  ];
}
