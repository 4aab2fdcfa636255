import { proveIdeas } from './ideas-proof.js';

/** More than any shipped drill has. */
proveIdeas(30_000);
