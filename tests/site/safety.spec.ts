import { expect, test } from './page-under-test.ts';

const LESSON = '/lessons/who-made-this';

test('the draft says first what it is, and leaves judgements to a person who signs', async ({
  watched: { page },
}) => {
  await page.goto(`${LESSON}/risk-assessment/`);
  const paper = page.locator('article.paper');
  await expect(paper).toContainText('Not valid until a named responsible person completes and signs it');
  await expect(paper).toContainText('Local law and your employer’s policy come first');
  await expect(paper.getByRole('row', { name: 'Signature' })).toContainText('to be completed');
  await expect(paper.getByRole('row', { name: 'Hazard 5' })).toContainText('to be completed');
  await expect(paper.locator('input, textarea')).toHaveCount(0);
});

test('the draft comes as a table for the employer’s own form', async ({ watched: { page } }) => {
  const answer = await page.request.get(`${LESSON}/risk-assessment.csv`);
  expect(answer.status()).toBe(200);
  const text = await answer.text();
  expect(text).toContain('DRAFT. Not valid');
  expect(text).toContain('What could hurt someone');
});

test('the safety sheet counts adults and says which rule decided', async ({ watched: { page } }) => {
  await page.goto(`${LESSON}/safety/`);
  const paper = page.locator('article.paper');
  await expect(paper).toContainText('Children never knap');
  // 30 pupils from age 7: DfEE 1998, 1 to 6.
  await expect(paper.getByRole('row', { name: /^30 / })).toContainText('5');
  await expect(paper.getByRole('row', { name: /^30 / })).toContainText('the ratio');
});

test('the safety sheet says from what age a real edge may be lifted', async ({ watched: { page } }) => {
  await page.goto(`${LESSON}/safety/`);
  // A polished axe is of the sharp class: look from 4, touch held from 7, lift from 11, use never (judgement).
  const row = page.getByRole('row', { name: /^sharp / });
  await expect(row).toContainText('polished axe');
  await expect(row.getByRole('cell')).toHaveText([/./, 'from 4', 'from 7', 'from 11', 'never']);
});
