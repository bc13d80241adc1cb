/** Everything the pages say in words. One language lives in `en/`; this is how the rest asks for it. */

export { partSaid } from './partSaid';
export { answerSentence, becauseSentence, bestTap, type Part } from './answer';
export { cautionText, NOT_A_RATING, type CautionId } from './cautions';
export {
  assumptionText,
  noteText,
  problemText,
  reasonText,
  remedyText,
  warningText,
  type Level,
} from './codes';
export { designerNote } from './designer';
export * from './format';
export {
  chamferText,
  driveHint,
  driveName,
  fluidText,
  handName,
  materialGroups,
  materialName,
  materialSaid,
  materialShort,
  styleBefore,
  styleName,
  tapName,
  tapSteel,
} from './names';
export { sourceKind, sourceMark } from './sources';
export { gaugeText, readingText } from './thread';
