/** What makes and words the exercises, in one piece that loads once the page stands. */

export { levelAfter } from '../../core/practice/judge';
export { makeExercise } from '../../core/practice/make';
export { Asked } from './Asked';
export { SheetPaper } from './SheetPaper';
