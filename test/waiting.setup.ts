/**
 * What is loaded when it is first wanted comes late on a busy machine: a test waits for it as long as it takes.
 * The usual second is the time of a quiet machine.
 */
import { configure } from '@testing-library/preact';

configure({ asyncUtilTimeout: 60_000 });
