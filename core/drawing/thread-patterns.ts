/** Spellings of a thread as they stand on a line. What a pattern takes is read by the thread reader, not here. */

const CLASS = String.raw`(?:\s*-?\s*\d[A-Hefgh](?:\d[GHgh])?(?![A-Za-z0-9.]))?`;
const METRIC_SIZE = String.raw`(?:(?:EG|STI)\s*)?M[JF]?\s*\d+(?:\.\d+)?`;
const INCH_SIZE = String.raw`(?:(?:#|No\.?|Nr\.?)\s*\d{1,2}|\d+[- ]\d+\/\d+|\d+\/\d+|\d*\.\d+|\d{1,2})"?`;
const TPI = String.raw`\d+(?:\s\d\/\d|-\d\/\d|\.\d+)?`;
const SERIES = String.raw`(?:UN(?:J?[CFS]|J?EF|J|R[A-Z]*)?|NEF|N[CFS]|\d{1,2}-?UN)\b`;

/** Longest first. */
export const THREADS: readonly RegExp[] = [
  new RegExp(
    `^${METRIC_SIZE}(?:\\s*x\\s*P?h?\\s*\\d*\\.?\\d+)?(?:\\s*P\\s*\\d*\\.?\\d+)?${CLASS}`,
    'i',
  ),
  new RegExp(
    `^${METRIC_SIZE}\\s*-\\s*(?:\\d?\\.\\d+|\\d(?=\\s*-\\s*\\d[GH]))${CLASS}(?![\\w.])`,
    'i',
  ),
  new RegExp(`^(?:STI\\s*)?${INCH_SIZE}\\s*[-x ]\\s*${TPI}\\s*-?\\s*${SERIES}${CLASS}`, 'i'),
  new RegExp(`^(?:STI\\s*)?${INCH_SIZE}\\s*-?\\s*${SERIES}${CLASS}`, 'i'),
  new RegExp(`^(?:STI\\s*)?${INCH_SIZE}\\s*-\\s*${TPI}${CLASS}`, 'i'),
  new RegExp(`^${INCH_SIZE}\\s*(?:-\\s*${TPI}\\s*)?(?:NPT[FR]?|NPS[MFCL]|BSPP|BSPT|BSP)\\b`, 'i'),
  /^(?:BSPP|BSPT|BSP|NPTF?)\s*\d+(?:[- ]\d+)?(?:\/\d+)?(?![\w.])/i,
  /^(?:G|Rp|Rc|R)\s*\d+(?:[- ]\d+)?(?:\/\d+)?(?:\s*[AB]\b)?/,
  /^(?:Tr|Sp|Rd)\s*\d+(?:\s*x\s*\d+)?\S*/i,
  new RegExp(`^${INCH_SIZE}\\s*-?\\s*(?:${TPI}\\s*)?(?:ACME|BSW|BSF|BA)\\b`, 'i'),
];

/** `M12x16`: what stands after the x may be a pitch or, in the ISO 6410 form, a depth. */
export const PITCH_PART = /^((?:(?:EG|STI)\s*)?M[JF]?\s*\d+(?:\.\d+)?)\s*x\s*(\d*\.?\d+)/i;

/** A class that stands apart from its thread: `6H`, `CLASS 2B`. */
export const LONE_CLASS =
  /^(?:class\s*|cl\.?\s*|fit\s*|tol\.?\s*)?([3-9][EFGHefgh](?:[3-9][GHgh])?|[123][AB])(?![A-Za-z0-9.])/;

const PLACE = String.raw`(?!\s*(?:side|view|end|face|edge|wall|corner|half|part|flange|boss|hole|only|elevation|bracket|bottom|top|(?:and|&|or|\/)\s*r\.?h))`;
/** Left hand in any spelling; LH SIDE and LH VIEW are places. */
export const LEFT_HAND = new RegExp(
  `^\\(?(?:left(?:[- ]?hand(?:ed)?)?|l\\.?\\s?h\\.?)(?![a-z0-9])\\)?(?:\\s*(?:thread|thd|tap)\\b)?${PLACE}`,
  'i',
);
export const RIGHT_HAND = new RegExp(
  `^\\(?(?:right[- ]?hand(?:ed)?|r\\.?\\s?h\\.?)(?![a-z0-9])\\)?(?:\\s*(?:thread|thd|tap)\\b)?${PLACE}`,
  'i',
);

export const FINE = /^(?:extra[- ])?fine\b(?:[- ]?(?:pitch|thread))?/i;
export const COARSE = /^coarse\b(?:[- ]?(?:pitch|thread))?/i;

const SOLID = String.raw`(?:key(?:ed|[- ]?lock(?:ed|ing)?|sert)?|solid|press(?:ed)?(?:[- ](?:in|fit))?|heat[- ]?(?:set|stake[ds]?)|ultrasonic|mou?lded[- ]?in|expansion|self[- ]tapping|brass|bush(?:ed)?|thin[- ]?wall(?:ed)?|threaded|knurled)`;
/** An insert with an outside thread or a seat of its own: its hole is not this thread's. */
export const SOLID_INSERT = new RegExp(
  `^(?:for\\s+)?(?:${SOLID}[- ]*)+(?:threaded\\s+|thread\\s+)?inserts?\\b|^threaded\\s+bush(?:ing)?\\b|^inserts?[,:]?\\s+(?:${SOLID}\\b\\s*)+`,
  'i',
);
const WIRE = String.raw`(?:wire|helical|coil(?:ed)?|screw[- ]?lock(?:ing)?|locking|screw|thread|free[- ]running|tangless|tang)`;
export const WIRE_INSERT = new RegExp(
  `^(?:for\\s+)?(?:STI|EG)(?![A-Za-z0-9.])(?:\\s*(?:tap|thread|hole)\\b)?|^(?:for\\s+)?(?:${WIRE}[- ]+)+inserts?\\b|^(?:helical|wire)[- ]+coils?(?:\\s+inserts?)?\\b|^inserts?\\b[,:]?(?:\\s+(?:${WIRE}\\b\\s*)+)?`,
  'i',
);
