import { proveIdeas } from './ideas-proof.js';

proveIdeas(400);
