/** Lets plain TypeScript import Astro components; `astro check` reads the real files instead. */
declare module '*.astro' {
  import type { AstroComponentFactory } from 'astro/runtime/server/index.js';

  const component: AstroComponentFactory;
  export default component;
}
