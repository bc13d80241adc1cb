/**
 * Property tests draw the same cases on every run of `npm test`, so that a red run is red for everyone.
 * `FC_SEED=random npm test` draws fresh ones; a failing seed is printed by the test itself.
 */
import fc from 'fast-check';

const asked = process.env['FC_SEED'];

if (asked !== 'random') fc.configureGlobal({ seed: Number(asked ?? 20_261_125) });
