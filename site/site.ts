/** Name and version of the site, said in one place. */

import { LANGUAGE } from '../components/words/en/site';
import { version } from '../package.json';

export const SITE = { name: LANGUAGE.site, version } as const;
