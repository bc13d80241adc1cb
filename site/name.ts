/** What the site is called. Apart from `site.ts`, so that plain Node can read it while it builds. */
export const SITE_NAME = 'Tapped Hole Handbook';
