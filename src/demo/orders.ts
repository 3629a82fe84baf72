/**
 * The demo shop's orders: invented clients and hunts, each at another place of the job. The client's figures are such as a
 * caller gives; the plans were made on the demo shelf.
 */
import type { AnswerValue } from '../domain/call/answer'
import type { QuestionId } from '../domain/call/questions'

export interface Order {
  readonly daysAgo: number
  readonly client: string
  readonly phone: string
  readonly answers: Partial<Record<QuestionId, AnswerValue>>
  readonly unknown?: readonly QuestionId[]
  readonly plan?: {
    readonly targetGr: number
    readonly c2cIn: number
    readonly quantity: number
    readonly spares: number
    readonly parts: readonly string[]
  }
  /** How far it has come: the call, a frozen sheet, a set before its trim step, or in the box. */
  readonly to: 'call' | 'frozen' | 'trim' | 'sent'
}

/** What the shop builds for bison. */
const BISON = [
  'Heron 200',
  'Clip 11',
  'Long post 158',
  'Ring 42',
  'Two-blade 250',
  'Broad vane 2.6',
  'Slow epoxy',
  'Vane glue',
]

export const ORDERS: readonly Order[] = [
  {
    daysAgo: 1100,
    client: 'Maren Tolliver',
    phone: '0155 0100 011',
    answers: {
      quarry: 'bison',
      bowKind: 'compound',
      peakDrawWeightLb: 72,
      drawLengthIn: 28.5,
      braceHeightIn: 6.75,
      chronograph: [
        [452, 268],
        [601, 236.5],
      ],
      restKind: 'drop-away',
      looseWith: 'release aid',
      hand: 'right',
    },
    plan: {
      targetGr: 816,
      c2cIn: 28.3,
      quantity: 3,
      spares: 0,
      parts: BISON,
    },
    to: 'sent',
  },
  {
    daysAgo: 400,
    client: 'Ishaan Veld',
    phone: '0155 0100 027',
    answers: {
      quarry: 'moose',
      bowKind: 'compound',
      peakDrawWeightLb: 65,
      drawLengthIn: 27.5,
      ratedSpeedFps: 330,
      braceHeightIn: 6.5,
      looseWith: 'release aid',
      hand: 'right',
    },
    plan: {
      targetGr: 656,
      c2cIn: 27.5,
      quantity: 3,
      spares: 0,
      parts: [
        'Heron 260',
        'Clip 11',
        'Long post 125',
        'Ring 15',
        'Two-blade 200',
        'Low vane 3',
        'Slow epoxy',
        'Vane glue',
      ],
    },
    to: 'sent',
  },
  {
    daysAgo: 6,
    client: 'Rosalind Achterberg',
    phone: '0155 0100 034',
    answers: {
      quarry: 'buffalo',
      bowKind: 'compound',
      peakDrawWeightLb: 84,
      drawLengthIn: 28,
      braceHeightIn: 6.5,
      chronograph: [
        [510, 275],
        [700, 240],
      ],
      looseWith: 'release aid',
      hand: 'right',
    },
    plan: {
      targetGr: 922,
      c2cIn: 28,
      quantity: 6,
      spares: 1,
      parts: [
        'Heron 175',
        'Clip 11',
        'Long post 210',
        'Ring 28',
        'Two-blade 300',
        'Broad vane 2.6',
        'Slow epoxy',
        'Vane glue',
      ],
    },
    to: 'trim',
  },
  {
    daysAgo: 3,
    client: 'Piet Oyelaran',
    phone: '0155 0100 048',
    answers: {
      quarry: 'bison',
      bowKind: 'compound',
      peakDrawWeightLb: 74,
      drawLengthIn: 28,
      ratedSpeedFps: 335,
      braceHeightIn: 6.25,
      looseWith: 'release aid',
      hand: 'left',
    },
    plan: {
      targetGr: 812,
      c2cIn: 28,
      quantity: 6,
      spares: 0,
      parts: BISON,
    },
    to: 'frozen',
  },
  {
    daysAgo: 0,
    client: 'Sunniva Marchetti',
    phone: '0155 0100 052',
    answers: { quarry: 'elk', bowKind: 'compound', labelDrawWeightLb: 70, wishWeightGr: 650, quantity: 6 },
    unknown: ['peakDrawWeightLb', 'drawLengthIn', 'markAtRestIn'],
    to: 'call',
  },
]
