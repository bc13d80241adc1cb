/** `npm run second-opinion`: the core against a reckoning that shares nothing with it, over the whole range. */
import {
  depthOpinion,
  metricBasicsOpinion,
  metricTolerancesOpinion,
  unifiedOpinion,
} from '../second/compare';

for (const opine of [unifiedOpinion, metricBasicsOpinion, metricTolerancesOpinion, depthOpinion]) {
  const { what, compared, agree, apart, ...more } = opine();
  console.log(`${what.padEnd(42)} ${agree} of ${compared} agree`);
  if ('nearest' in more)
    console.log(`${''.padEnd(42)} ${more.nearest} of them are the nearest preferred number`);
  for (const line of apart) console.log(`  ${line}`);
}
