/** What plans and draws kept holes, in one piece that loads when there is something to plan. */

export { AddHole } from './AddHole';
export { JobView } from './JobView';
export { jobsCsv } from './table';
