export { joinPage, type PageParts } from './join-page.ts';
export { pagePolicy, type PolicyHashes } from './page-policy.ts';
export { scriptText, styleText } from './page-text.ts';
