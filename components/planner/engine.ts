/**
 * Everything that reckons and answers, in one piece that loads on the first touch of the form:
 * a reader who only looks at the page never waits for it.
 */

export { spoken } from '../result/AnswerLine';
export { answerSentence } from '../words';
export { designationChanges } from './designation';
export { fromCallout, withCallout } from './fromCallout';
export { PlanResult } from './PlanResult';
export { fieldProblemText } from './problems';
export { readingOf } from './reading';
export { attempt } from './state';
