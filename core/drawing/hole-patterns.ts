/** Counts, circles, diameters, countersinks and counterbores of a callout, tried where the reading stands. */

import { LENGTH, plainLength } from './length';

export const COUNT = [
  /^\(?(\d{1,9})\s*x\s*\)?(?=[\s¦¶(]|[MGØ#TR.⌴⌵]|\d+\/\d|$)(?!\s*\d+(?:\.\d+)?\s*(?:deep|dp|depth|°))\s*/i,
  // `4-M6`: a count and a dash, as much of the world writes it.
  /^(\d{1,9})\s*-\s*(?=MJ?\s?\d|Ø)/i,
  /^\(?\s*(\d{1,4})\s*(?:x\s*)?(?:places?|plcs?|plc'?s|pl|pcs?|off|ea(?:ch)?|req(?:uire)?'?d|reqd|equal(?:ly)? spaced|eq\.?\s*sp\.?|(?:tapped\s+|drilled\s+)?holes?(?!\s*(?:depth|deep|dp)\b))(?![a-z])\.?\s*\)?/i,
  /^(\d{1,3})\s*(?=tapped hole)/i,
  /^\(\s*(\d{1,4})\s*(?:x\s*)?\)/i,
  /^(?:qty|quantity|quant|qnty)\.?\s*[:=]?\s*(\d{1,4})/i,
  /^(?:x\s*(\d{1,3})|no\.?\s*off\s*:?\s*(\d{1,3})|no\.?\s*(\d{1,3}))\s*(?:places?|plcs?|off|holes?)(?![a-z])\.?/i,
];

const CIRCLE_WORD = String.raw`(?:b\.?\s?c\b\.?|b\.?\s?c\.?\s?d\b\.?|p\.?\s?c\.?\s?d\b\.?|p\.?\s?c\b\.?|(?:bolt|pitch|hole)[- ]circle(?:\s*Ø)?|circle)`;
/** The circle that holes lie on, which is no size of theirs. */
export const CIRCLE = [
  new RegExp(
    String.raw`^(?:on\s+)?(?:an?\s+|the\s+)?Ø?\s*${plainLength('circle')}\s*Ø?\s*${CIRCLE_WORD}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:on\s+)?(?:an?\s+|the\s+)?${CIRCLE_WORD}\s*Ø?\s*(?:of\s*)?${plainLength('circle')}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:on|auf|sur|su|en|sobre)\s+(?:an?\s+|un\s+)?Ø\s*${plainLength('circle')}`,
    'i',
  ),
  new RegExp(
    String.raw`^eq(?:ui|ually)?\.?[- ]?sp(?:aced)?\.?\s*(?:on\s+|at\s+|,\s*)?Ø\s*${plainLength('circle')}`,
    'i',
  ),
  new RegExp(String.raw`^(?:on\s+)?(?:an?\s+)?${CIRCLE_WORD}`, 'i'),
] as const;

const SINK = String.raw`(?:⌵|c'?[ /-]?sunk|csk|c'?[ /-]?sk|c'?[ /-]?sink|cs'?k|countersink|countersunk)`;
export const COUNTERSINK = [
  new RegExp(
    String.raw`^${SINK}\s*(?:to\s*)?Ø?\s*${plainLength('sink')}\s*(?:x|/|-|,)?\s*(?<angle>\d{2,3}(?:\.\d+)?)\s*°`,
    'i',
  ),
  new RegExp(
    String.raw`^${SINK}\s*(?:to\s*)?Ø?\s*${plainLength('sink')}\s*(?:x|/)\s*(?<angle>\d{2,3}(?:\.\d+)?)(?![\w.])`,
    'i',
  ),
  new RegExp(
    String.raw`^${SINK}\s*(?<angle>\d{2,3}(?:\.\d+)?)\s*°\s*(?:incl(?:uded)?\.?\s*)?(?:x|to|/|-)?\s*Ø?\s*${plainLength('sink')}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?<angle>\d{2,3}(?:\.\d+)?)\s*°\s*${SINK}\s*(?:x|to|/|-)?\s*Ø?\s*${plainLength('sink')}(?!\s*(?:deep|dp|depth))`,
    'i',
  ),
  new RegExp(
    String.raw`^Ø?\s*${plainLength('sink')}\s*(?:x\s*(?<angle>\d{2,3})\s*°)?\s*${SINK}(?:\s*(?:x\s*)?(?<later>\d{2,3})\s*°)?`,
    'i',
  ),
  new RegExp(
    String.raw`^${SINK}\s*(?:to\s*)?Ø?\s*${plainLength('sink')}(?!\s*(?:°|deep|dp|depth))`,
    'i',
  ),
] as const;
/** The cutter's angle and no diameter: to just over the thread. */
export const BARE_SINK = [
  new RegExp(String.raw`^${SINK}\s*(?<angle>\d{2,3}(?:\.\d+)?)\s*°(?:\s*incl(?:uded)?\.?)?`, 'i'),
  new RegExp(String.raw`^(?<angle>\d{2,3}(?:\.\d+)?)\s*°\s*${SINK}`, 'i'),
] as const;
/** `1 X 45°`, `CHAMFER .03 X 45°`: a bevel at the mouth, by its width and the angle of its side. */
export const CHAMFER = [
  new RegExp(
    String.raw`^(?:chamfer(?:ed)?|cham\.?|chfr?\.?|bevel)\s*${plainLength('width')}\s*(?:x|at|/)\s*(?<side>\d{2}(?:\.\d+)?)\s*°`,
    'i',
  ),
  new RegExp(
    String.raw`^${plainLength('width')}\s*x\s*(?<side>45)\s*°(?:\s*(?:chamfer|cham\.?|chfr?\.?|bevel))?`,
    'i',
  ),
] as const;

const BORE = String.raw`(?:⌴|c'?[ /-]?bored?|cbore|c\/b(?:ore)?|counter-?\s?bored?|s\/?\.?f(?:ace)?d?\b\.?|s'?face|spot-?\s?faced?)`;
const DEEP = String.raw`(?:\s*(?:↧|x|deep|depth|dp\.?)\s*${plainLength('floor')}(?:\s*(?:deep|dp|depth)\b\.?)?|\s+${plainLength('floorAfter')}\s*(?:deep|dp|depth)\b\.?)?`;
export const COUNTERBORE = [
  new RegExp(String.raw`^${BORE}\s*(?:to\s*)?Ø?\s*${plainLength('bore')}${DEEP}`, 'i'),
  new RegExp(String.raw`^Ø?\s*${plainLength('bore')}\s*Ø?\s*${BORE}(?![a-z])${DEEP}`, 'i'),
] as const;

/** Position and other geometric tolerances: a frame of which no diameter is a hole. */
export const FRAME =
  /^(?:[⌖⏥⌓⌒⏊⟂∥⫽◎⌭↗⌰]\s*\|?\s*Ø?\s*\d*\.?\d*|\|?\s*Ø\s*\d*\.?\d+\s*\(?[ⓂⓁⓈⓅ]\)?)/;

/** What stands after a diameter that is no tap drill. */
export const NO_DRILL =
  /^\s*(?:H\d|[a-hj-np-wyz]\d{1,2}(?![\w.])|[JKNPR]S?\d(?![\w.])|±|\+|ream|boss|shaft|dowel|pin\b|ref\b|o\.?d\.?\b|i\.?d\.?\b|spigot|pilot bore|cast\b|cored\b|cap\b|stud|rod)/i;
/** A word that makes the diameter before it the drill for the tap. */
export const DRILL_AFTER =
  /^\s*(?:tap(?:ping)?\s*)?(?:drill(?:ed)?|drl|pilot(?:\s+hole)?)\b(?!\s*(?:dp|depth|deep)\b)\.?/i;

/** `Ø6.8`, and `6.8 DIA` where no figure follows that the sign could belong to. */
export const DIAMETER = new RegExp(
  String.raw`^(?:Ø\s*${plainLength('size')}|${plainLength('before')}\s*Ø(?=\s*(?:↧|x|thru|through|drill|drl|\d*\.?\d+(?:\/\d+)?\s*"?\s*(?:deep|dp|depth)\b)))`,
  'i',
);
const DRILL = String.raw`(?:(?:pre-?)?(?:tap(?:ping)?\s*)?(?:drill(?:ed)?|drl|pilot(?:\s+(?:hole|drill))?|tap hole))`;
export const DRILL_DIAMETER = new RegExp(
  String.raw`^${DRILL}\b\.?\s*(?:hole\s*)?:?\s*Ø\s*${plainLength('size')}`,
  'i',
);
/** `DRILL 6.8`: a size, unless a depth word follows. */
export const DRILL_SIZE = new RegExp(
  String.raw`^${DRILL}\b\.?\s*:?\s*${plainLength('size')}(?!\s*(?:deep|dp|depth)\b|[\w./]|\s?x\s?M|-\d)`,
  'i',
);
/** `#7 DRILL`, `letter F drill`, `7/16 DRILL`, `6.8 mm drill`: the size stands before the word. */
export const NAMED_DRILL = new RegExp(
  String.raw`^(?:(?<sign>#|no\.?|nr\.?)\s*(?<number>\d{1,2})|(?:letter\s*)(?<lettered>[A-Z])|(?<letter>[A-Z])|${plainLength('size')})(?:\s*\(\s*Ø?\.?\d*\.?\d+"?\s*\))?\s*(?:tap\s*)?(?:drill|drl)(?:ed)?\b(?!\s*(?:dp|depth|deep)\b)\.?`,
  'i',
);
/** `DRILL #7`, `TAP DRILL: F`. */
export const DRILL_NAMED = new RegExp(
  String.raw`^${DRILL}\b\.?\s*:?\s*(?:(?<sign>#|no\.?|nr\.?)\s*(?<number>\d{1,2})|(?:letter\s*)?"?(?<letter>[A-Z])"?)(?![\w.'&])(?!\s*&)`,
  'i',
);

export const DRILL_WORD = new RegExp(String.raw`^${DRILL}(?:ing)?\b\.?`, 'i');
export const TAP_WORD =
  /^(?:(?:bottom(?:ing)?\s+)?tap(?:ped|ping)?(?:\s+(?:blind\s+)?holes?)?|thread(?:ed|s)?(?:\s+holes?)?|thds?|int(?:ernal)?\.?\s+(?:thread|thd))\b\.?/i;
export const HOLE_WORD = /^(?:through\s+|thru\s+)?holes?\b\.?/i;

const FROM = String.raw`(?:\s*(?:to|at|@)\s*(?:the\s*)?(?<at>drill point|point|tip|shoulder|full dia|full Ø))?`;
const THREAD = String.raw`(?:thd|thds|thread|threads|tap|tapped|tapping|threaded)`;
/** The words of a depth go with the figure after them, where there is one. */
const NO_FIGURE = String.raw`(?!\s*[:=]?\s*(?:min\.?\s*)?[↧]?\s*\.?\d)`;
const DEEPS = String.raw`(?:deep|dp|dpth|depth)`;
const FULL = String.raw`(?:full|effective|eff\.?|usable|complete|perfect|useful|min\.?(?:imum)?\s*(?:full)?)`;
/** Depths that say whose they are. */
export const THREAD_DEPTH = [
  new RegExp(
    String.raw`^(?:min\.?(?:imum)?\s*)?(?:${FULL}\s*)?${THREAD}\b\.?\s*(?:${DEEPS}|length|lg|long)\b\.?\s*(?:of\s*)?[:=]?\s*(?:min\.?\s*)?↧?\s*${LENGTH}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:min\.?(?:imum)?\s*)?${FULL}\s*${THREAD}\b\.?\s*(?:${DEEPS}|length|lg|long)?\b\.?\s*(?:to\s*)?[:=]?\s*(?:min\.?\s*)?↧?\s*${LENGTH}(?:\s*${DEEPS}\b\.?)?`,
    'i',
  ),
  new RegExp(
    String.raw`^[x@↧]?\s*${LENGTH}\s*(?:${DEEPS}\b\.?\s*)?(?:of\s*)?${FULL}\s*${THREAD}\b\.?(?:\s*(?:${DEEPS}|min|length|lg|long)\b\.?)*${NO_FIGURE}`,
    'i',
  ),
  new RegExp(
    String.raw`^[x@↧]?\s*${LENGTH}\s*(?:min\.?\s*)?${THREAD}\b\.?\s*(?:${DEEPS}|length|lg|long)\b\.?(?:\s*min\b\.?)?${NO_FIGURE}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:depth|length)\s*of\s*(?:full\s*)?${THREAD}\b\.?\s*[:=]?\s*${LENGTH}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:full\s+)?${THREAD}\b\.?\s*(?:x|to|↧)?\s*${LENGTH}\s*(?:min\.?\s*)?${DEEPS}\b\.?${FROM}`,
    'i',
  ),
  new RegExp(String.raw`^(?:full\s+)?${THREAD}\b\.?\s*↧\s*${LENGTH}`, 'i'),
] as const;
export const DRILL_DEPTH = [
  new RegExp(
    String.raw`^(?:(?:tap\s*)?drill|drl|drilled|hole|bore|pilot)\s*(?:${DEEPS}|to)\b\.?\s*[:=]?\s*↧?\s*${LENGTH}(?:\s*${DEEPS}\b\.?)?${FROM}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:(?:tap\s*)?drill|drl|drilled|hole|pilot)\b\.?\s*(?:x|↧|to)?\s*${LENGTH}\s*${DEEPS}\b\.?${FROM}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:(?:tap\s*)?drill|drl|drilled|hole|pilot)\b\.?\s*↧\s*${LENGTH}${FROM}`,
    'i',
  ),
  new RegExp(
    String.raw`^[x@]?\s*${LENGTH}\s*(?:(?:tap\s*)?drill|drl|hole|bore|pilot)\s*${DEEPS}\b\.?${FROM}${NO_FIGURE}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:depth)\s*of\s*(?:the\s*)?(?:hole|drill(?:ing)?)\b\.?\s*[:=]?\s*${LENGTH}${FROM}`,
    'i',
  ),
] as const;
export const DEPTH = [
  new RegExp(
    String.raw`^↧\s*(?:min\.?\s*)?${LENGTH}(?:\s*${DEEPS}\b\.?)?(?:\s*(?:min|max)\b\.?)?${FROM}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:min\.?\s*)?(?:[-x@]\s*)?${LENGTH}\s*${DEEPS}(?![a-z])\.?(?<after>\s*\(?\b(?:min|max)(?:imum)?\b\.?\)?)?${FROM}`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:min\.?\s*)?${DEEPS}(?![a-z])\.?\s*(?:of\s*)?[:=]?\s*(?:min\.?\s*)?${LENGTH}(?!\s*-\s*\d)(?<after>\s*\b(?:min|max)\b\.?)?${FROM}`,
    'i',
  ),
  new RegExp(String.raw`^x\s*${LENGTH}(?![\w.°]|\s*°|\s*M\d|\s*(?:places|plcs|off|holes))`, 'i'),
] as const;

export const THROUGH =
  /^(?:(?:drill(?:ed)?|tap(?:ped)?)\s+)?(?:thru'?|through|thro'?|thr)(?![a-z])\.?(?:\s*[- ]?\s*all\b)?(?:\s*holes?\b)?/i;
/** A length right after THRU is how thick the part is there. */
export const THICKNESS = new RegExp(
  String.raw`^[-x(=]?\s*(?:in\s+|t\s*=\s*)?${plainLength('thick')}(?:\s*\))?(?:\s*(?:thick|thk)\b\.?)?(?:\s*\))?(?![\w./]|-\d|\s*(?:-\s*\d|x\b|x\d|°|%|walls?\b|sides?\b|plates?\b|places?\b|plcs?\b|pl\b|off\b|pcs?\b|holes?\b|tapped\b|eq\b|equal|deep\b|dp\b|depth\b|full\b|min\b|drill|drl|Ø|thread|thd|tap\b|BC\b|PCD\b|hrc\b|UN|NPT|BSP))`,
  'i',
);
export const BLIND = /^blind\b(?:\s+holes?\b)?/i;
export const FLAT_BOTTOM = /^flat[- ]?bottom(?:ed)?\b(?:\s+(?:hole|drill)\b)?/i;
export const DRILL_POINT =
  /^(?:(?<before>\d{2,3})\s*°\s*(?:incl\.?\s*)?drill\s*(?:point|tip)|drill\s*(?:point|tip)\s*(?<after>\d{2,3})\s*°)/i;
