/** The pieces a callout is made of, as patterns to be tried where the reading stands. */

const NUMBER = String.raw`(?:\d+[- ]\d+\/\d+|\d+\/\d+|\d*\.\d+|\d+\.?)`;
/** A length with the unit that may follow it. */
export const LENGTH = String.raw`(${NUMBER})\s*(mm\b|in\b\.?|inch(?:es)?\b|")?`;

const CLASS = String.raw`(?:\s*-?\s*\d[A-Hefgh](?:\d[GHgh])?(?![A-Za-z0-9.]))?`;
const HAND = String.raw`(?:\s*-?\s*(?:LH|LEFT[- ]HAND)\b)?`;
/** A hole for a wire insert, said after the thread. */
const INSERT = String.raw`(?:\s*STI\b)?`;
const METRIC_SIZE = String.raw`(?:(?:EG|STI)\s*)?MJ?\s*\d+(?:\.\d+)?`;
const INCH_SIZE = String.raw`(?:(?:#|No\.?|Nr\.?)\s*\d{1,2}|\d+[- ]\d+\/\d+|\d+\/\d+|\d*\.\d+|\d{1,2})"?`;
const TPI = String.raw`\d+(?:\s\d\/\d|-\d\/\d|\.\d+)?`;
const SERIES = String.raw`(?:UN(?:J?[CFS]|J?EF|J|R[A-Z]*)?|NEF|N[CFS]|\d{1,2}-?UN)\b`;

/** Spellings of a thread, longest first. What a pattern takes is read by the thread reader, not here. */
export const THREADS: readonly RegExp[] = [
  new RegExp(
    `^${METRIC_SIZE}(?:\\s*x\\s*P?h?\\s*\\d*\\.?\\d+)?(?:\\s*P\\s*\\d*\\.?\\d+)?${CLASS}${HAND}${INSERT}`,
    'i',
  ),
  new RegExp(
    `^(?:STI\\s*)?${INCH_SIZE}\\s*[-x ]\\s*${TPI}\\s*-?\\s*${SERIES}${CLASS}${HAND}${INSERT}`,
    'i',
  ),
  new RegExp(`^(?:STI\\s*)?${INCH_SIZE}\\s*-\\s*${TPI}${CLASS}${HAND}`, 'i'),
  new RegExp(`^${INCH_SIZE}\\s*(?:-\\s*${TPI}\\s*)?(?:NPT[FR]?|NPS[MFCL]|BSPP|BSPT|BSP)\\b`, 'i'),
  new RegExp(`^(?:G|Rp|Rc|R)\\s*\\d+(?:[- ]\\d+)?(?:\\/\\d+)?(?:\\s*[AB]\\b)?${HAND}`),
  /^(?:Tr|Sp|Rd)\s*\d+(?:\s*x\s*\d+)?\S*/i,
  new RegExp(`^${INCH_SIZE}\\s*-?\\s*(?:${TPI}\\s*)?(?:ACME|BSW|BSF|BA)\\b`, 'i'),
];

/** `M12x16`: what stands after the x may be a pitch or, in the ISO 6410 form, a depth. */
export const PITCH_PART = /^((?:(?:EG|STI)\s*)?MJ?\s*\d+(?:\.\d+)?)\s*x\s*(\d*\.?\d+)/i;

export const COUNT = [
  /^(\d{1,9})\s*x(?=\s|[MGØ#TR.])\s*/i,
  // `4-M6`: a count and a dash, as much of the world writes it.
  /^(\d{1,9})\s*-\s*(?=MJ?\s?\d)/i,
  /^\(?\s*(\d{1,4})\s*(?:places?|plcs?|pl|pcs?|off|holes?|equal(?:ly)? spaced)\b\.?\s*\)?/i,
  /^\(\s*(\d{1,4})\s*(?:x\s*)?\)/i,
  /^qty\.?\s*:?\s*(\d{1,4})/i,
];

const SINK = String.raw`(?:⌵|c'?sunk|c'?sk|c'?sink|countersink|countersunk)`;
export const COUNTERSINK = [
  new RegExp(`^${SINK}\\s*(?:to\\s*)?Ø?\\s*${LENGTH}\\s*(?:x|/)\\s*(\\d+(?:\\.\\d+)?)\\s*°?`, 'i'),
  new RegExp(`^${SINK}\\s*(\\d+(?:\\.\\d+)?)\\s*°\\s*(?:x|to|/)?\\s*Ø?\\s*${LENGTH}`, 'i'),
  new RegExp(`^${SINK}\\s*(?:to\\s*)?Ø?\\s*${LENGTH}`, 'i'),
] as const;
export const COUNTERBORE = new RegExp(
  `^(?:⌴|c'?bore|counterbore|spot-?face|s\\.?f\\.?(?=\\s*Ø))\\s*Ø?\\s*${LENGTH}(?:\\s*(?:↧|x|deep)\\s*${LENGTH}(?:\\s*deep)?)?`,
  'i',
);

/** The circle that holes lie on, which is no size of theirs. */
export const CIRCLE = [
  new RegExp(
    `^(?:on\\s+)?(?:an?\\s+)?Ø?\\s*${LENGTH}\\s*Ø?\\s*(?:b\\.?\\s?c\\b\\.?|b\\.?c\\.?d\\b\\.?|p\\.?c\\.?d\\b\\.?|bolt circle|pitch circle)`,
    'i',
  ),
  new RegExp(
    `^(?:on\\s+)?(?:an?\\s+)?(?:b\\.?c\\.?d?|p\\.?c\\.?d|bolt circle|pitch circle)\\b\\.?\\s*Ø?\\s*${LENGTH}`,
    'i',
  ),
  new RegExp(`^on\\s+(?:an?\\s+)?Ø\\s*${LENGTH}`, 'i'),
] as const;

export const HOLE = new RegExp(`^(?:(?:tap\\s*)?(?:drill|drl|bore|pilot)\\s*)?Ø\\s*${LENGTH}`, 'i');
/** `#7 DRILL`, `letter F drill`, `7/16 DRILL`, `6.8 mm drill`: the size stands before the word. */
export const NAMED_DRILL = new RegExp(
  `^(?:(#|no\\.?|nr\\.?)\\s*(\\d{1,2})|(?:letter\\s*)?([A-Z])|${LENGTH})\\s*(?:tap\\s*)?(?:drill|drl)\\b`,
  'i',
);
export const DRILL_WORD = new RegExp(`^(?:tap\\s*)?(?:drill|drl)\\s+${LENGTH}(\\s*deep\\b)?`, 'i');

const TO = String.raw`(?:\s*(?:min|max)\b\.?)?(?:\s*(?:to|at)\s*(?:the\s*)?(point|tip|shoulder|full dia))?`;
export const DEPTH = [
  new RegExp(`^↧\\s*${LENGTH}${TO}`, 'i'),
  new RegExp(`^(?:[-x@]\\s*)?${LENGTH}\\s*(?:min\\.?\\s*)?(?:deep|dp|depth|tief)\\b\\.?${TO}`, 'i'),
  new RegExp(`^(?:deep|depth|dp)(?=\\b|\\d)\\.?\\s*:?\\s*${LENGTH}${TO}`, 'i'),
  new RegExp(
    `^(?:min\\.?\\s*)?(?:full|effective|usable)\\s*(?:thd|thread|threads)\\b\\.?\\s*(?:depth|length)?\\s*:?\\s*${LENGTH}`,
    'i',
  ),
  new RegExp(
    `^${LENGTH}\\s*(?:min\\.?\\s*)?(?:full|effective|usable)\\s*(?:thd|thread|threads)\\b\\.?`,
    'i',
  ),
  new RegExp(`^x\\s*${LENGTH}(?![\\w.])`, 'i'),
] as const;

export const THROUGH = /^(?:thru|through|thro'?)\b\.?(?:\s*all\b)?/i;

/** Words that say nothing a plan could use. */
export const NOISE =
  /^(?:typ(?:ical)?\b\.?|min\b\.?|max\b\.?|full\b|effective\b|(?:thread|thd|thds|threads|tap|drl|tapped|hole|holes|drill|and|with|for|on|as shown|as drawn|eq(?:ui|ually)?\b\.?\s*sp(?:aced)?\b\.?|near side|far side|both sides|bottom|flat bottom|prior to tap(?:ping)?|before plat(?:e|ing)|after plat(?:e|ing))\b\.?|[-/;:,|()@+&.]+)/i;
export const TYPICAL = /^typ(?:ical)?\b\.?/i;
