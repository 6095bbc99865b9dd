/** Sentences of the quote: what is offered, for how much, what it does, and what it does not cover. */
export const quoteSentences: Readonly<Record<string, string>> = {
  'quote.title': '{filter}: quote',
  'quote.subtitle': '{family}',
  'quote.subtitle.of': '{family}; quote of {day}',
  'quote.description': 'What the work on {filter} costs, what it does, and what it does not cover.',
  'quote.lead.total': 'The work below comes to {total}.',
  'quote.lead.open': 'The work below is not priced in full yet: what is priced comes to {total}.',
  'quote.lead.none.found': 'Nothing is priced yet, and no re-pack is planned.',
  'quote.lead.none.planned':
    'Nothing is priced yet. Media and parts of the planned re-pack cost {cost}; labour comes on top.',
  'quote.lead.none.left':
    'Nothing was quoted. Media and parts of the re-pack cost {cost}; labour comes on top.',
  'quote.until': 'It holds until {day}.',
  'quote.no-day': 'No last day is stated: ask whether it still holds.',

  'heading.quote-lines': 'What is offered',
  'table.quote-labour': 'Labour',
  'table.quote-parts': 'Parts and media',
  'column.work': 'work',
  'column.time': 'time',
  'column.each': 'each',
  'quote.price.open': 'open',
  'quote.total': 'In all: {total}.',
  'quote.total.open': 'So far, without what is open: {total}.',
  'quote.missing': 'No price yet for: {lines}.',
  'quote.notes': 'Note: {notes}',

  'heading.quote-options': 'The choices',
  'quote.options.how':
    'As it came, dirty, no more is known than the flow where it was timed. All other choices begin clean: flow and water past the mechanical media are those of the clean filter; feed is that which it carries {day} after every bed was cleaned, nothing cleaned between.',
  'quote.options.since':
    'These are the figures of the quote, computed before the work; what was measured since stands in the sheet.',
  'table.options': 'What each choice gives',
  'column.choice': 'choice',
  'column.bypass': 'misses the mechanical media',
  'column.once': 'once',
  'choice.nothing': 'Leave it as it is',
  'choice.clean': 'Clean it, packed as it was',
  'choice.repack.planned': 'Re-pack it as planned',
  'choice.repack.left': 'Re-pack it, as was then done',
  'choice.flow.timed': '{flow}, timed',
  'choice.unknown': 'not known',
  'choice.no-charge': '{zero}',
  'choice.on-request': 'on request',
  'choice.parts-only': '{cost} and labour',
  'choice.so-far': '{cost} so far',

  'heading.quote-terms': 'Terms',
  'quote.warranty': 'Warranty on this work: {warranty}',
  'quote.no-warranty': 'A warranty on this work is not stated.',
  'quote.maker':
    'To open a filter, to alter it, or to pack it with other media than its maker’s may end the maker’s warranty. Ask the maker first where it still runs.',
  'heading.quote-excluded': 'Not in it',
  'excluded.lines':
    'Whatever no line above names. What is found only when it is open is told before it is charged.',
  'excluded.wiring':
    'Wiring, sockets and residual-current devices: these are for a licensed electrician. A sealed motor is not opened, a damaged cable not mended.',
  'excluded.animals': 'Advice on the health of animals; a number of animals that the tank can keep.',
  'excluded.used-up': 'Media that are used up later: they are in the cost of a year above.',

  'heading.quote-approval': 'Approval',
  'quote.approved': 'Approved on {day}.',
  'quote.approved.by': 'Approved on {day} by {by}.',
  'quote.approved.how': 'Said: {how}.',
  'quote.approved.amount': 'Agreed to: {amount}.',
  'quote.approved.other': 'That is another sum than the one above.',
  'quote.to-approve': 'I agree to the work above.',
  'blank.name': 'Name',
  'blank.day': 'Day',
  'blank.signature': 'Signature',
};
