/** The shop's own rules, who stands at the bench, and the book as a whole: backup, check, restore. */
import { Link } from 'wouter'
import type { Rules } from '../../domain/shop/rules'
import { RULES_SUBJECT } from '../../domain/shop/rules-subject'
import { partsOfKind } from '../../domain/stock/shelf'
import { changeRules } from '../../state/shop-actions'
import { Page } from '../app/page'
import { useApp, useAppStore } from '../app/use-app'
import { ChoiceField } from '../controls/choice-field'
import { Panel } from '../controls/panel'
import { QuantityField } from '../controls/quantity-field'
import { TextField } from '../controls/text-field'
import { VersionsApart } from '../controls/versions-apart'
import { Label } from '../figures/label'
import { Backup } from './backup'
import { CloseShop } from './close-shop'
import { ForgetClient } from './forget-client'
import { JumpList } from './jump-list'
import { NamesList } from './names-list'
import { PassesPanel } from './passes-panel'
import { PlacesPanel } from './places-panel'
import { Rescue } from './rescue'
import { RoutePanel } from './route-panel'
import { QuarryPanel } from './quarry-panel'
import { RULE_FIELDS } from './rule-fields'
import type { RuleField } from './rule-fields'
import { ScalesPanel } from './scales-panel'
import look from './shop.module.css'

/** What the page holds, in its order; *Rescue* stands there only when there is something to rescue. */
const SUBJECTS = [
  'Names',
  ...RULE_FIELDS.map(({ title }) => title),
  'Sensible weights by quarry',
  'Passes at the grinder',
  'Scales',
  'Jigs',
  'Builders',
  'Glues',
  'Bench route',
  'Place rules',
  'Backup',
  'Forget a client',
]

export default function ShopPage() {
  const store = useAppStore()
  const shelf = useApp((s) => s.shelf)
  const { rules } = shelf
  const glues = partsOfKind(shelf, 'glue')
  const book = useApp((s) => s.book)
  const builder = useApp((s) => s.builder)
  const setBuilder = useApp((s) => s.setBuilder)
  const change = (part: Partial<Rules>) => void changeRules(store.getState(), { ...rules, ...part })
  return (
    <Page title="Shop" tab="Shop" about={book === 'demo' ? 'the demo shop' : undefined} aside={<CloseShop />}>
      <div className={look.page}>
        <JumpList titles={SUBJECTS} />
        <VersionsApart kind="rules" subject={RULES_SUBJECT} what="the shop’s rules" />
        <Panel title="Names" quiet>
          <TextField
            label="Shop"
            name="shopName"
            hint="heads every print"
            value={rules.shopName}
            onCommit={(shopName) => change({ shopName })}
          />
          <TextField
            label="Who stands at the bench"
            name="builder"
            hint="written on every record from now on"
            value={builder}
            onCommit={(name) => {
              if (name !== '') setBuilder(name)
            }}
          />
          <ChoiceField
            label="Units"
            name="units"
            hint="what every page shows; records keep what was read"
            choices={[
              { value: 'trade', label: 'grains, inches, pounds' },
              { value: 'metric', label: 'metric' },
            ]}
            value={rules.units}
            onChoose={(units) => change({ units })}
          />
        </Panel>
        {RULE_FIELDS.map(({ title, fields }) => (
          <Panel key={title} title={title} quiet>
            {fields.map((field) => (
              <RuleEntry key={field.label} field={field} rules={rules} onRules={change} />
            ))}
            {title === 'Prices' ? (
              <TextField
                label="Currency"
                name="currency"
                hint="beside every price; an order accepted before keeps its own"
                value={rules.currency}
                onCommit={(currency) => {
                  if (currency !== '') change({ currency })
                }}
              />
            ) : null}
          </Panel>
        ))}
        <QuarryPanel quarry={rules.quarry} onQuarry={(quarry) => change({ quarry })} />
        <PassesPanel rules={rules} onRules={change} />
        <ScalesPanel scales={rules.scales} onScales={(scales) => change({ scales })} />
        <Panel title="Jigs" quiet>
          <p>
            Offered on the sheet; the bench names the one to take at the fletch, and it stands in the arrow’s record.
          </p>
          <NamesList one="a jig" names={rules.jigs} most={20} onNames={(jigs) => change({ jigs: [...jigs] })} />
        </Panel>
        <Panel title="Builders" quiet>
          <p>Offered at the bench with one tap; every reading is by the one who stands there.</p>
          <NamesList
            one="a builder"
            names={rules.builders}
            most={30}
            onNames={(names) => change({ builders: [...names] })}
          />
        </Panel>
        <Panel title="Glues" quiet>
          <p>
            A glue’s cure times, temperatures and what it leaves in a joint stand with the parts, with its bottles as
            lots.
          </p>
          <ul className={look.rows}>
            {glues.map(({ id, body }) => (
              <li key={id} className={look.row}>
                <Link to={`/parts/glue/${id}`}>
                  <Label>{body.name}</Label>
                </Link>
              </li>
            ))}
          </ul>
          {glues.length === 0 ? <Link to="/parts">Go to the parts to add one</Link> : null}
        </Panel>
        <RoutePanel route={rules.route} onRoute={(route) => change({ route: [...route] })} />
        <PlacesPanel places={rules.places} onPlaces={(places) => change({ places })} />
        <Rescue />
        <Backup />
        <ForgetClient />
      </div>
    </Page>
  )
}

interface RuleEntryProps {
  field: RuleField
  rules: Rules
  onRules: (change: Partial<Rules>) => void
}

function RuleEntry({ field: { label, hint, asked, read, put, clear }, rules, onRules }: RuleEntryProps) {
  const store = useAppStore()
  return (
    <QuantityField
      label={label}
      hint={hint}
      asked={asked(rules)}
      value={read(rules)}
      onCommit={({ value }) => onRules(put(rules, value))}
      {...(clear === undefined ? {} : { onClear: () => void changeRules(store.getState(), clear(rules)) })}
    />
  )
}
