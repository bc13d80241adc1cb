/** Name and version of the site, said in one place. */

import { version } from '../package.json';
import { SITE_NAME } from './name';

export const SITE = { name: SITE_NAME, version } as const;
