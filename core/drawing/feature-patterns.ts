/** What is done to the part, what the thread carries and what meets the hole: words that change a plan. */

import type { Duty, LaterProcess } from '../plan/types';
import { plainLength } from './length';

const HARDNESS = String.raw`(?:\(?\s*\d{2,3}(?:\s*[-/]\s*\d{2,3}|\s*±\s*\d+)?\s*(?:HRC|HRB|HRA|HB|HV|HBW|Rc)\b\s*\)?|(?:HRC|HRB|HB|HV)\s*\d{2,3}(?:\s*-\s*\d{2,3})?)`;

export const LATER: readonly (readonly [RegExp, LaterProcess])[] = [
  [
    new RegExp(
      String.raw`^(?:(?:and|then)\s+)?(?:(?:case|flame|induction|through|surface|vacuum|laser)[- ])?(?:harden(?:ed|ing)?|heat[- ]?treat(?:ed|ment|ing)?|h\.?t\.?(?=\s|$)|carburi[sz](?:e|ed|ing)|carbonitrid(?:e|ed|ing)|nitrid(?:e|ed|ing)|nitrocarburi[sz](?:e|ed|ing)|quench(?:ed)?|temper(?:ed)?|austemper(?:ed)?)\b\.?(?:\s*(?:and|&)\s*temper(?:ed)?\b)?(?:\s*(?:to\s*)?${HARDNESS})?`,
      'i',
    ),
    'harden',
  ],
  [new RegExp(`^${HARDNESS}`, 'i'), 'harden'],
  [
    /^(?:hard[- ]?)?anodi[sz](?:e|ed|ing)?\b\.?(?:\s*type\s*(?:I{1,3}|\d)\b)?|^anodic\b(?:\s*(?:coat(?:ing)?|film)\b)?|^hardcoat(?:ed)?\b/i,
    'anodise',
  ],
  [
    /^(?:(?:electroless|hard|bright|electro|hot[- ]dip|yellow|clear|black|trivalent|EN|Zn|Ni|Cr|Cd|Sn|Ag)[- ]*)*(?:zinc|nickel|chrom(?:e|ium)|cadmium|cad|tin|silver|copper|gold|galvani[sz]ed?|galvani[sz]ing|galv\b\.?|electroplated?|plated|plating|coat(?:ed|ing)?s?|e-?coat(?:ed)?|powder[- ]?coat(?:ed|ing)?|paint(?:ed|ing)?|ZnNi|Zn|DLC|PTFE)\b\.?(?:[- ]*(?:zinc|nickel|chrome|plate[d]?|plating|coat(?:ed|ing)?|flake[d]?)\b)*(?:\s*Fe\/Zn\s?\d+\w*)?/i,
    'plate',
  ],
  [/^(?:electroless|hot[- ]dip(?:ped)?)\b/i, 'plate'],
  [/^weld(?:ed|ing|ment|s)?\b\.?/i, 'weld'],
];
/** PLATE is sheet metal as often as a coating: only where a word beside it says which. */
export const PLATE_NOUN = /^plate\b\.?/i;
export const BEFORE_LATER = /^(?:prior\s+to|before)\b(?:\s+(?:the|final))?/i;
export const AFTER_LATER = /^(?:after|post)\b(?:\s+(?:the|final))?/i;

export const DUTIES: readonly (readonly [RegExp, Duty])[] = [
  [
    /^(?:for\s+)?(?:lifting|lift|hoist(?:ing)?|crane|sling(?:ing)?|rigging|jacking)\b(?:[- ]+(?:eye|bolt|lug|point|hook|ring|hole|use|only)s?\b)*|^(?:for\s+)?(?:swivel\s+)?(?:eye[- ]?bolts?|eye[- ]?nuts?|eyes?|shackles?)\b/i,
    'lifting',
  ],
  [
    /^(?:pressure|gas|leak|oil|water|fluid|air)[- ]?tight\b|^pressure(?:[- ](?:test(?:ed)?|proof|vessel|port|boundary|containing))?\b|^hydraulic\b(?:\s+(?:port|test))?|^leak[- ]?proof\b|^proof\s+test(?:ed)?\b|^\d+(?:\.\d+)?\s*(?:bar|psi|MPa)\b/i,
    'pressure',
  ],
  [/^structural\b|^structure\b|^load[- ]bearing\b|^anchor(?:age)?\b/i, 'structure'],
  [
    /^(?:seat[- ]?belt|brakes?|steering|suspension|chassis|wheel[- ](?:stud|bolt|nut)s?|hub|caliper)\b/i,
    'vehicle',
  ],
  [/^(?:medical|implant|surgical|bone|dental|prosthe(?:sis|tic))\b/i, 'medical'],
];

const PASSAGE = String.raw`(?:bores?|holes?|galler(?:y|ies)|oil[- ]?ways?|water[- ]?ways?|ports?|passages?|drillings?|drilled|channels?|ducts?)`;
/** A hole or slot across this one, its width where it stands beside. */
export const CROSSING = [
  new RegExp(
    String.raw`^Ø?\s*${plainLength('width')}\s*Ø?\s*(?:(?:wide\s+)?(?<slot>key[- ]?ways?|key[- ]?seats?|slots?|grooves?)|(?:cross(?:ed|ing)?|intersecting|transverse|oil|water)[- ]?${PASSAGE}|gallery|cross[- ]?drill(?:ed)?)\b`,
    'i',
  ),
  new RegExp(
    String.raw`^(?:(?<slot>key[- ]?ways?|key[- ]?seats?|slots?|grooves?)|(?:cross(?:ed|ing)?|intersecting|transverse)[- ]?${PASSAGE}|cross[- ]?drill(?:ed)?)\b\s*Ø?\s*${plainLength('width')}(?:\s*wide\b)?(?!\s*(?:deep|dp|depth))`,
    'i',
  ),
] as const;
/** The same without a width. */
export const BARE_CROSSING = new RegExp(
  String.raw`^(?:(?:cross(?:ed|ing)?|intersecting|transverse)[- ]?${PASSAGE}|cross[- ]?drill(?:ed)?|key[- ]?ways?|key[- ]?seats?|interrupted)\b`,
  'i',
);
/** The hole ends in another one, or nothing may fall below it. */
export const OPENS_INTO = new RegExp(
  String.raw`^(?:(?:thru|through)\s+)?(?:in\s?to|breaks?\s+(?:in)?to|breaks?\s+through|opens?\s+(?:in)?to|intersects?|meets?|to\s+meet|to\s+intersect|till|as\s+far\s+as|up\s+to|to)\s+(?:the\s+|main\s+|an?\s+)*(?:Ø\s*${plainLength('width')}\s*)?(?:(?:cross|main|centre|center|central|oil|water|coolant|air|inner|bearing|cylinder|spindle|pilot)[- ]?)*(?:${PASSAGE}|cavit(?:y|ies)|pockets?|tank|sump|chamber|keyway|slot|reservoir|manifold|housing|interior|inside|crankcase|gearbox)\b`,
  'i',
);
export const GALLERY =
  /^(?:(?:oil|water|coolant|main)[- ]?)?(?:galler(?:y|ies)|oil[- ]?ways?|water[- ]?ways?)\b/i;
export const NO_CHIPS =
  /^(?:no\s+(?:chips?|swarf|cuttings|debris)\b(?:\s+(?:below|allowed|permitted|inside|in\s+(?:the\s+)?(?:bore|hole|gallery|housing|cavity)|to\s+fall(?:\s+in(?:to)?)?|may\s+fall))*|(?:chips?|swarf)\s+(?:must|may|shall|are|is)\s+not\s+(?:to\s+)?(?:fall|enter|drop)\b(?:\s+(?:below|in(?:to)?|through|inside))*|keep\s+(?:chips?|swarf)\s+out\b|(?:chip|swarf)[- ]free\b)/i;

/** The face slopes: degrees from square. */
export const ENTRY = [
  /^(?:on\s+|at\s+|in\s+)?(?:an?\s+|the\s+)?(?<angle>\d{1,2}(?:\.\d+)?)\s*°\s*(?:angled?\s+|inclined\s+|sloping\s+|sloped\s+|slanting\s+|slanted\s+|tapered\s+)*(?:face|surface|slope|incline|ramp)\b/i,
  /^(?:entry\s+|on\s+|at\s+)?(?:an?\s+|the\s+)?(?:(?:angled?|inclined|sloping|sloped|slanting|slanted|oblique|entry)\s+)*(?:face|surface|slope)\s*(?:angle(?:d)?|inclined|at|of|is|sloping|=|:)?\s*(?:at\s*)?(?<angle>\d{1,2}(?:\.\d+)?)\s*°(?:\s*(?:to|from)\s+(?:the\s+)?(?:hole\s+)?(?:axis|square|normal|horizontal|hole))?/i,
  /^(?:at\s+|inclined\s+(?:at\s+|by\s+)?|angled?\s+(?:at\s+)?|tilted\s+(?:by\s+)?)(?<angle>\d{1,2}(?:\.\d+)?)\s*°(?:\s*(?:to|from)\s+(?:the\s+)?(?:face|surface|normal|vertical|square|axis))?(?!\s*(?:position|apart|spacing|intervals?|cent(?:re|er)s?))/i,
  /^(?<angle>\d{1,2}(?:\.\d+)?)\s*°\s*(?:to|from)\s+(?:the\s+)?(?<from>face|surface|normal|square)\b/i,
] as const;
/** Square to the face, which is what every plan takes for granted. */
export const SQUARE_ENTRY =
  /^(?:(?:90\s*°|normal|perpendicular|square)\s+to\s+(?:the\s+)?(?:face|surface))\b/i;

export const CORED =
  /^(?:cored\b(?:\s+holes?\b)?|cast[- ]?(?:in\s+)?holes?\b|cast[- ]in\b|as[- ]cast(?:\s+holes?)?\b|hole\s+(?:is\s+)?(?:as[- ])?cast(?:\s+in)?\b|from\s+cast(?:ing)?\b|core[- ]?cast\b)/i;
