export { readCasePackage } from './read-package.ts';
export { writeCasePackage } from './write-package.ts';
export { writeFramework } from './write-framework.ts';
