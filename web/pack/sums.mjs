// Sums of contents: short ones for names, whole ones for the browser to check.

import { createHash } from 'node:crypto';

/** For a name: long enough that no two builds of a life meet by chance. */
export const hash_of = (content) => createHash('sha256').update(content).digest('hex').slice(0, 12);

/** As an integrity attribute has it. */
export const sum_of = (content) => `sha384-${createHash('sha384').update(content).digest('base64')}`;

/** As a content security policy names an inline script or style. */
export const policy_sum = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
