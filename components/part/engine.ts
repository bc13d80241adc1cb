/** What reckons and answers for a part, in one piece that loads at the first touch of the form. */

export { spoken } from '../result/AnswerLine';
export { designationChanges } from '../planner/designation';
export { materialReadText } from '../words/material';
export { keepPart } from './keep';
export { PartResult } from './PartResult';
export { TableColumns } from './TableColumns';
export { answerParts } from '../words/en/partSentences';
export { attempt } from './state';
export { shopDrawer } from './shopDrawer';
