/** One exercise to answer on the screen: the same questions as in the lessons. */

import { useMemo } from 'preact/hooks';
import type { Exercise } from '../../core/practice/types';
import { Calculate } from '../lesson/Calculate';
import { Choose } from '../lesson/Choose';
import { Order } from '../lesson/Order';
import { saidExercise } from './said';

interface Props {
  exercise: Exercise;
  onAnswered?: (right: boolean) => void;
}

export function Asked({ exercise, onAnswered = () => {} }: Props) {
  const said = useMemo(() => saidExercise(exercise), [exercise]);
  const { question } = said;
  if (said.type === 'length') {
    const { answer, tolerance, slips, working } = said;
    return (
      <Calculate
        name="exercise"
        measure="length"
        {...{ question, answer, tolerance, slips, working, onAnswered }}
      />
    );
  }
  if (said.type === 'order') {
    return (
      <Order name="exercise" steps={said.steps} start={said.start} {...{ question, onAnswered }} />
    );
  }
  return <Choose name="exercise" options={said.options} {...{ question, onAnswered }} />;
}
