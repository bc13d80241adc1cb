/** Words of what goes into or through a hole: they say a hole is no tapped one, unless it says TAP as well. */

const HEADS = String.raw`(?:socket|hex(?:agon)?|cap|button|flat|pan|cheese|fillister|set|grub|shoulder|machine|countersunk|csk|head|hd|soc|allen|self[- ]?tapping|thread[- ]forming|tapping|drive|dog[- ]point|cup[- ]point|high[- ]tensile)`;

export const FASTENER = new RegExp(
  String.raw`^(?:for\s+|to\s+suit\s+|suits?\s+)?(?:an?\s+|the\s+)?(?:${HEADS}[- ]+)*(?:(?:cap|set|grub|machine)?screws?|bolts?(?!\s*circle)|studs?|nuts?(?:plate)?|scr\b\.?|SHCS|SHSS|BHCS|FHCS|FHSCS|HHCS|HHB|HHMS|PHMS|SSS|washers?)(?![a-z])(?:\s*(?:holes?|head|hd|body|shank|size|dia|Ø)\b)?`,
  'i',
);
export const CLEARANCE =
  /^(?:(?:close|free|loose|medium|normal|coarse)\s+fit\b|(?:body\s+)?(?:clearance|clear|clr|clnc)\b\.?(?:\s+(?:holes?|fit|drill|for|on))*)/i;
/** Standards of screws, bolts, nuts and washers. From memory. */
export const FASTENER_STANDARD =
  /^(?:DIN|ISO|EN\s+ISO)\s*(?:912|931|933|934|936|965[01]|985|6912|7984|7991|91[3-6]|938|939|125|127|6325|4762|4014|4016|4017|4018|4026|4027|4028|4029|4032|4035|7089|7090|7380(?:-\d)?|7045|7046|1207|2009|10642|7040|580|582)\b/i;
/** Strength grades of screws: `8.8`, `10.9`, `A2-70`. */
export const GRADE = /^(?:(?:grade|class|gr\.?)\s*)?(?:8\.8|10\.9|12\.9|A[24]-[578]0)(?![\w.])/i;
