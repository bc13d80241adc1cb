/** Name and version of the site, said in one place. */

import { version } from '../package.json';

export const SITE = { name: 'Tapped Hole Handbook', version } as const;
