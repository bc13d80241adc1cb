/** Words of a thread's page and of the tables it shares with the calculators. English. */

import type { GaugeMember, GaugeProof, TurnRule } from '../../../core/gauge/members';
import type { PipeDrill } from '../../../core/gauge/pipe';
import type { DrillChoice } from '../../../core/drill/drill';
import type { TableRow } from '../../reference/tableRow';

export const VERDICTS: Record<
  DrillChoice['verdict'],
  { word: string; sign: 'good' | 'amber' | 'stop' }
> = {
  inside: { word: 'inside', sign: 'good' },
  risk: { word: 'at risk', sign: 'amber' },
  outside: { word: 'outside', sign: 'stop' },
};

export const HEADINGS = {
  limits: 'Limits of the class',
  drills: 'Drills, each judged',
  holes: 'Hole by length of engagement',
  form: 'Hole before a form tap',
  room: 'Chamfer, and room in a blind hole',
  taps: 'Tap limits that suit',
  gauges: 'Gauges',
  engagement: 'How deep is enough',
  relatives: 'Same size, another hole',
  pipe: 'Gauge and drills',
  lessons: 'Why these numbers',
  sources: 'Where it comes from',
} as const;

export const LIMITS = {
  class: 'Class',
  minor: 'Minor diameter (hole), {unit}',
  pitch: 'Pitch diameter, {unit}',
  basis: 'Basis',
  tabulated: 'table',
  computed: 'computed',
  open: 'not known here',
  major: 'Major diameter: at least {major}, no upper limit. ',
  basic: 'Basic sizes: major {major}, pitch {pitch}, minor {minor}.',
  percent:
    'The hole of class {class} leaves {shop} of thread on the US shop base (3/4 of the sharp height), {iso} on the ISO base (5/8).',
  percentFew: 'On the US shop base class {class} leaves {shop} of thread, {iso} on the ISO base.',
} as const;

export const DRILLS = {
  drill: 'Drill',
  mm: 'mm',
  in: 'in',
  percent: '% of thread, shop / ISO base',
  likely: 'Likely hole, {unit}',
  verdict: 'Verdict',
  listed: 'in the printed lists',
  chosen: 'first choice',
  note: 'Inside: even if it cuts as large as such drills usually do in steel. At risk: only if it cuts its own size. Other materials scatter less.',
  none: 'No stocked drill falls inside. Bore or ream the hole to {min}–{max}.',
  outside: 'Drills further off are left out.',
} as const;

export const TRAPS = {
  listed:
    'Printed lists give {drill} for this thread, but[, at {size},] it is over the hole of class {classes}.',
  plenty:
    '{drill} looks near enough at {percent} of thread (shop base), but[, at {size},] it is over the hole of class {classes}.',
  title: 'Trap drills',
  title1: 'Trap drill',
} as const;

export const HOLES = {
  engagement: 'Engagement',
  hole: 'Hole, in',
  upTo: 'to {to} D',
  between: '{from} to {to} D',
  note: 'Class {class}. The longer the thread, the larger the hole may be. The last row passes the class and is from memory.',
} as const;

export const FORM = {
  drill: 'Drill',
  window: 'Hole for 75 to 60 %',
  sensitivity: 'Each {step} larger costs',
  likely: 'As drills usually cut',
  balance: 'By balance of volume',
  scale:
    'Percentages here are on the form-tap scale, a third base. The balance of volume asks for a smaller hole: try it, and gauge the minor diameter.',
  none: 'no stocked drill; ream',
  thread: '{percent} of thread',
} as const;

export const ROOM = {
  chamfer: 'Chamfer of the tap',
  length: 'Its length, {unit}',
  synchronous: 'Room below full thread, synchronous',
  floating: 'Floating holder',
  note: 'Room: the longest chamfer of the class and a stop clearance of 1 pitch (synchronous) or 3 (floating), without chips or a point on the tap.[ By hand with the shortest chamfer made: {hand}.]',
  runOut: ' DIN 76-1 draws {runOut} from full thread to floor.',
} as const;

export const TAPS = {
  class: 'Class',
  limit: 'Tap',
  pitch: 'Its pitch diameter',
  wear: 'May wear',
  spare: 'May cut large',
  verdict: 'Verdict',
  listed: 'recommended',
  listedBare: 'listed where nothing coats it',
  range:
    'Of the {system} numbers, {from} to {to} suit class {class}, even where the tap cuts {step} large.',
  one: 'Of the {system} numbers, only {from} suits class {class} where the tap cuts {step} large.',
  wearNote:
    'May wear: before the GO gauge stops. May cut large: before the NOT GO enters. For a coating or a metal that closes in, go up.',
  none: 'No list of tap limits reaches this size. ISO 2857 classes below.',
} as const;

export const GAUGES: Record<GaugeMember, string> = {
  go: 'GO thread plug',
  'not-go': 'NOT GO thread plug',
  'minor-go': 'GO plain plug',
  'minor-not-go': 'NOT GO plain plug',
};

export const PROOFS: Record<GaugeProof, string> = {
  'pitch-not-small': 'pitch diameter not too small',
  'lead-and-angle': 'pitch and flank angle good enough',
  'major-not-small': 'cut deep enough for the screw’s crest',
  'pitch-not-large': 'pitch diameter not too large',
  'minor-not-small': 'hole not drilled too small',
  'minor-not-large': 'hole not drilled too large',
};

export const GAUGE_TABLE = {
  gauge: 'Gauge',
  size: 'Stands for, {unit}',
  proves: 'Proves',
  turns:
    'The NOT GO thread plug may enter by hand, never forced: {rules}. The drawing says which rule holds.',
  rule: 'up to {turns} turns ({depth}) under {name}',
  note: 'Thread plugs say nothing of the drilled hole: that takes the plain ones.',
} as const;

export const TURN_RULES: Record<TurnRule['rule'], string> = {
  'asme-b1-2': 'ASME B1.2',
  'iso-1502': 'ISO 1502',
};

export const ENGAGEMENT = {
  metal: 'Tapped metal',
  screw: 'Screw {grade}',
  note: 'Full thread to ask for, {unit}: what it takes for the screw to break before a thread strips, times 1.25 to 1.5. In brackets, in diameters.',
  rating: 'One steady pull, worst sizes, strengths from memory. Not a rating.',
  diameters: '{from}–{to} D',
} as const;

export const RELATIVES = {
  insert: 'For a wire insert',
  j: 'J thread',
  hole: 'Hole {hole}',
  drill: 'drill {drill}',
  pitch: 'pitch diameter {pitch}',
  taps: 'tap {taps}',
  noMax: 'at least {min}',
} as const;

export const PIPE = {
  gauge:
    'The plug gauge measures over {length}. Turned in by hand it comes flush with the mouth, give or take {turns} ({travel} either way).',
  gaugeRc:
    'The gauge plane lies {length} from the large end. It may be off by {turns} ({travel}) either way.',
  taper:
    'A taper thread is gauged by how far the gauge goes in, not measured by depth or diameter: the tap’s depth sets the size of the thread.',
  sizes: 'Pitch diameter at the mouth (E1) {mouth}; effective thread of the pipe (L2) {effective}.',
  drills: 'Drill',
  none: 'No drill and gauge values are held here for this size. Take them from its standard.',
  pressure:
    'Whether a joint holds pressure is not answered here. That belongs to the responsible engineer and the code that governs the work.',
  turns1: '1 turn',
  turns: '{turns} turns',
} as const;

export const PIPE_HOLES: Record<PipeDrill['hole'], string> = {
  reamed: 'then taper reamer',
  straight: 'straight hole, no reamer',
  parallel: 'parallel thread',
};

export const PAGE = {
  threads: 'Threads',
  title: '{name} thread: limits, tap drills, taps and gauges',
  description:
    '{name}: minor and pitch diameter limits, tap drills judged against the class, form-tap hole, tap limits, gauges and depth of thread.',
  drill: 'Drill',
  hole: 'Hole, class {class}',
  pitch: 'Pitch diameter, class {class}',
  formDrill: 'Form-tap drill',
  computed:
    'Computed to the standards named, not certified to them. Where the drawing or its standard says otherwise, they rule.',
  plan: 'Plan a hole with this thread',
  calculate: 'Another class, left hand, coating: thread limits',
  tables: 'Tables to print',
  noDrill: 'bore or ream',
  shopBase: '{percent} of thread, shop base',
} as const;

export const BAR = {
  title: 'Where the drill must land, class {class}',
  description:
    'A bar from {min} to {max}, the hole of class {class}. On it the drills near it, each a mark at its own size with a line to the size it likely cuts. {inside} {traps}',
  insideList: 'Inside: {drills}.',
  trapList: 'Outside: {drills}.',
  hole: 'hole of class {class}, {unit}',
  upTo: 'to',
  key: '● inside, ▲ at risk, ✕ outside. The line from a mark runs to the hole such a drill likely cuts.',
  pitchTitle: 'pitch diameter of class {class}, {unit}',
  pitchDescription:
    'A bar from {min} to {max}, the pitch diameter of class {class}, with the pitch diameters of new taps on it: {taps}.',
} as const;

export const TABLES = {
  title: '{series} threads: limits and drills',
  thread: 'Thread',
  hole: 'Hole, {unit}',
  pitch: 'Pitch diameter, {unit}',
  gauge: 'Gauge length, mm',
  drill: 'Drill',
  percent: '% of thread, shop base',
  listed: 'Printed lists',
  description:
    'Hole and pitch diameter limits with the drill that falls inside, to print or download.',
  note: 'Hole: the minor diameter. † at risk: its likely oversize passes the class. ‡ outside the class. – nothing held or nothing stocked: see the thread’s page.',
  download: 'Download',
  other: 'Other tables',
} as const;

/** Columns of the files. */
export const FILE_COLUMNS: Record<keyof TableRow, string> = {
  thread: 'thread',
  class: 'class',
  unit: 'unit of the limits',
  minorMin: 'minor diameter min',
  minorMax: 'minor diameter max',
  pitchMin: 'pitch diameter min',
  pitchMax: 'pitch diameter max',
  majorMin: 'major diameter min',
  basis: 'basis',
  drill: 'drill',
  drillMm: 'drill mm',
  percentShop: 'percent of thread (US shop base)',
  percentIso: 'percent of thread (ISO base)',
  verdict: 'drill in class',
  listed: 'drill of the printed lists',
  listedVerdict: 'listed drill in class',
  gaugeLengthMm: 'gauge length mm',
};

/** At the head of a file: title, source and edition, unit, what the words mean. */
export const FILE_HEAD = {
  title: '{site} {version}: {title}. {description}',
  source: 'Source: {title}. {trust}',
  limits:
    'Limits in the unit named in each row: mm, or inches as the standard rounds them. Computed to the standards, not certified to them.',
  verdicts:
    'drill in class: inside = even with its likely oversize in steel; risk = only if it cuts its own size; outside = over or under the class.',
} as const;
