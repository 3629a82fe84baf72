/**
 * Fails when the page breaks a rule of WCAG 2.2 A or AA that can be tested by a program, or a best practice. axe is put into
 * the page once and asked for what is wrong alone: several times quicker than its own runner, which support.spec.ts holds
 * this against.
 */
import { expect, type Page } from '@playwright/test'
import axe from 'axe-core'

/** Rules that depend on the colours, or on the room there is; all others find the same whatever these are. */
export const RULES_OF = {
  colours: ['color-contrast', 'link-in-text-block'],
  room: ['target-size', 'scrollable-region-focusable', 'meta-viewport', 'css-orientation-lock'],
} as const

interface Found {
  readonly tried: number
  readonly said: readonly string[]
}

/** @param rules only these; all when undefined */
export async function axeFinds(page: Page, rules?: readonly string[]): Promise<Found> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source)
  return page.evaluate(async (only) => {
    // What the page makes of a new width stands a frame after the width does.
    for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame)
    // A button still on its way to a new colour is judged by neither the old nor the new one.
    for (const change of document.getAnimations()) change.finish()
    const { axe: inPage } = window as unknown as { readonly axe: typeof axe }
    const { violations, passes } = await inPage.run(document, {
      resultTypes: ['violations'],
      ...(only === undefined ? {} : { runOnly: [...only] }),
    })
    const said = violations.flatMap(({ id, help, nodes }) =>
      nodes.map((node) => `${id}: ${help} at ${node.target.join(' ')} — ${node.failureSummary ?? ''}`),
    )
    return { tried: passes.length + violations.length, said }
  }, rules)
}

export async function expectAccessible(page: Page, what = page.url(), rules?: readonly string[]): Promise<void> {
  const { tried, said } = await axeFinds(page, rules)
  if (rules === undefined) expect(tried, 'rules that were tried').toBeGreaterThan(0)
  expect(said, `what axe finds on ${what}`).toEqual([])
}
