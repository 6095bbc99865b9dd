/** Sentences of the care plan, to the owner of the filter. */
export const careSentences: Readonly<Record<string, string>> = {
  'care.title': '{filter}: care plan',
  'care.description':
    'What to time, what to rinse, what to test, and when to ask for help, for the owner of {filter}.',
  'care.lead.found': 'For whoever keeps it running, packed as it was found.',
  'care.lead.planned': 'For whoever keeps it running, once it is packed as planned.',
  'care.lead.left': 'For whoever keeps it running, packed as it was handed back.',

  'heading.care-jug': 'Is it time to clean?',
  'jug.how.vessel':
    'Let the outlet run into a marked vessel, held at the same place each time, and take the time to fill it, three times; the middle one counts. Only the filter is plugged in for that, and no hand is in the water.',
  'jug.sump':
    'What runs into the vessel is missing in the section with the pump: take no more than it can spare without drawing air, and pour it back before the next run.',
  'jug.how.bag':
    'Its outlet is under water, so a bag catches the flow: with every plug pulled, tie a thin bag without holes, pressed flat, round the outlet. Plug in only the filter, hands out of the water; pull its plug when the time is over, take the bag off, and measure what is in it. Three times; the middle one counts (common practice, no source).',
  'jug.when.vessel':
    'At {share} of the clean flow it wants cleaning (common practice, no source): then the vessel takes a third longer.',
  'jug.when.bag':
    'At {share} of the clean flow it wants cleaning (common practice, no source): then a quarter less is in the bag.',
  'jug.timed': 'The clean flow was timed when it was handed back: {flow}.',
  'jug.computed.vessel':
    'The clean flow is computed, {flow}: time it in the first week, write that time down, and take a third longer than that instead of the table.',
  'jug.computed.bag':
    'The clean flow is computed, {flow}: catch it in the first week, write that volume down, and take three quarters of it instead of the table.',
  'table.jug.vessel': 'Time to fill',
  'table.jug.bag': 'What the bag catches',
  'column.given.vessel': 'vessel',
  'column.given.bag': 'plugged in for',
  'column.when-clean': 'clean',
  'column.clean-at.vessel': 'clean it from',
  'column.clean-at.bag': 'clean it below',
  'blank.own.vessel': 'Own vessel',
  'blank.own.bag': 'Own time',
  'blank.own-clean.vessel': 'Its time when clean',
  'blank.own-clean.bag': 'Its volume when clean',

  'heading.care-cleaning': 'Cleaning',
  'table.care-beds': 'Beds as the water meets them',
  'column.care': 'what to do',
  'column.when': 'when',
  'care.press': 'press out in tank water until it runs nearly clear',
  'care.rinse': 'rinse in tank water until it runs nearly clear',
  'care.sock': 'change for a clean one; wash it without soap or softener',
  'care.swish': 'swish in tank water, no more',
  'care.draw-off': 'draw its dirt off with a hose, from a third of it at a time',
  'care.moved': 'nothing while it moves: the water keeps it clean',
  'care.when-moved': 'look every week whether all of it moves',
  'care.replace': 'replace',
  'care.each-time': 'at each cleaning, after about {interval}',
  'care.clean-then-replace': '{clean}; in the end replace',
  'care.ends.clogs': 'at each cleaning, after about {time}: it clogs by then, and is not rinsed but replaced',
  'care.ends.full': 'after about {time}: it has taken up by then what it can',
  'care.ends.calendar': 'after {time}, whatever it looks like',
  'care.each-time-then': 'clean {each}; replace {ends}',
  'care.when-dirty': 'only when dirt shows, and then on another day than the others',
  'care.when-dirty.alone': 'only when dirt shows',
  'care.flow-decides': 'The flow decides, not the calendar.',
  'care.calendar-decides':
    'Once the bed that clogs first has done so, the water goes past it, {flow} of the clean flow still comes, and the test of the flow does not show it: clean by these times, and sooner where the test asks for it.',
  'care.stagger':
    'The table names every bed: take half of them at one cleaning, and the others two weeks later (common practice, no source).',
  'heading.care-media': 'What to mind about the media',
  'heading.care-steps': 'How',
  'care.steps.moved': 'Only where media stick together, or where a screen is blocked:',
  'care.step.open.canister':
    'Fill a bucket from the tank. Pull the plugs, close the taps, part the hoses with their ends above the surface of the tank, and open the filter over a tray.',
  'care.step.open.sump':
    'Fill a bucket from the tank. Pull the plugs, let the water come down, and lift the media out, with what holds them, over a bucket.',
  'care.step.open.hanging':
    'Fill a bucket from the tank. Pull the plugs, let the box run empty, and lift the media out over a tray.',
  'care.step.open.submerged':
    'Fill a bucket from the tank. Pull the plugs, put a bag or bowl under the filter, and lift it out.',
  'care.step.open.air':
    'Fill a bucket from the tank. Pull the plugs, put a bag or bowl under the filter, and lift it out.',
  'care.step.open.built-in':
    'Fill a bucket from the tank. Pull the plugs, and touch at most a third of the media: the rest stays as it lies.',
  'care.step.start.air':
    'Put it back under water with its lift tube and air line on firmly, then plug the air pump in.',
  'care.step.start.built-in': 'See that no water can go round the media, then plug in.',
  'care.step.look.air': 'See that the bubbles rise as before, and that no water stands in the air line.',
  'care.step.look.built-in': 'See that water comes out as strongly as before.',
  'calendar.air': 'Air line, its check valve and the stone: clear, and no water in the line',
  'care.step.rinse.built-in':
    'Rinse that third in the bucket, or draw its dirt off with a hose; never with tap water, never with soap.',
  'care.step.rinse.moved':
    'Clear the screens, and rinse in the bucket only what sticks together; never with tap water, never with soap.',
  'care.step.back.built-in': 'Lay what was taken out back as it lay, as in the drawing.',
  'care.step.rinse':
    'Rinse in the bucket what the table names, never under the tap, never with soap; what waits stays wet.',
  'care.step.back': 'Put everything back in its place and the same way up, as in the drawing.',
  'care.step.start.canister': 'Close it, fill it, open the taps, plug in, and tip it until the air is out.',
  'care.step.start.canister.column':
    'Close it, fill it slowly from below, open the taps and plug in, the first litres into a bucket.',
  'care.step.start.sump':
    'Fill to the mark, plug in, and see that the water goes through the media and not over an edge.',
  'care.step.start.hanging': 'Fill the box with tank water, then plug in; it must never run dry.',
  'care.step.start.submerged':
    'Put it back under water, let the air out, then plug in; it must never run dry.',
  'care.step.look.canister': 'Lay dry paper under it and look at it after an hour and the next day.',
  'care.step.look.sump': 'Pull the plug of the pump once more: what runs down must stay in the box.',
  'care.step.look.hanging': 'See that it hangs level and that nothing runs over its rim.',
  'care.step.look.submerged': 'See that water comes out as strongly as before.',
  'drawing.care': 'What lies where, in section.',

  'heading.care-tests': 'Water tests after the work',
  'care.tests.why':
    'Media that were moved, rinsed or replaced have fewer bacteria for some weeks: feed half in the first week, and test the water (common practice, no source).',
  'care.tests.rise':
    'If ammonia or nitrite shows at all, stop feeding, change a quarter of the water and test every day until neither shows (common practice, no source).',
  'care.tests.count': 'Days count from the day on which it runs in the tank again.',
  'care.tests.dated':
    'Days count from {day}; if it runs in the tank again on another day, count from that one.',
  'table.water-tests': 'Ammonia and nitrite, as the kit counts them',
  'column.day': 'day',
  'column.date': 'date',
  'column.ammonia': 'ammonia',
  'column.nitrite': 'nitrite',
  'column.done': 'seen, done',

  'heading.care-calendar': 'By the calendar',
  'table.care-calendar': 'Looked at whatever the flow says (common practice, no source)',
  'column.every': 'every',
  'every.week': 'week',
  'every.month': 'month',
  'every.year': 'year',
  'calendar.strainer': 'Strainer of the intake, cleared where something hangs on it',
  'calendar.leaks.canister': 'Paper under the filter, taps, hose ends and the lowest point of the cable: dry',
  'calendar.leaks.sump': 'Pipes, joints and the floor under it: dry',
  'calendar.leaks.hanging': 'Rim, paper below it and the lowest point of the cable: dry',
  'calendar.drip-loop': 'Cable: whole, and hanging in a loop that is lower than its socket',
  'care.spill.intake-hose-off':
    'If the intake hose comes off, up to {volume} leave the tank: its surface falls by {fall}. Lift the hose end above the surface, or close the tap.',
  'care.spill.intake-hose-off.room':
    'If the intake hose comes off, up to {volume} leave the tank: its surface falls by {fall}, and there is room for {room}. Lift the hose end above the surface, or close the tap.',
  'care.spill.outlet-hose-off-running':
    'If the outlet hose comes off while the pump runs, it empties up to {volume} onto the floor: the surface falls by {fall}. Pull the plug.',
  'care.spill.outlet-hose-off-running.room':
    'If the outlet hose comes off while the pump runs, it empties up to {volume}: the surface falls by {fall}, and there is room for {room}. Pull the plug.',
  'care.spill.outlet-hose-off-stopped':
    'If the outlet hose comes off while the pump stands, up to {volume} run back: the surface falls by {fall}.',
  'care.spill.outlet-hose-off-stopped.room':
    'If the outlet hose comes off while the pump stands, up to {volume} run back: the surface falls by {fall}, and there is room for {room}.',
  'care.spill.power-fails':
    'When the power fails, {volume} run down from the tank: its surface falls by {fall}. Switch off once a month and watch.',
  'care.spill.power-fails.room':
    'When the power fails, {volume} run down from the tank: its surface falls by {fall}, and below there is room for {room}. Switch off once a month and watch.',
  'calendar.siphon-hole': 'Air holes in the tubes just below the water line: open',
  'calendar.flow': 'Test of the flow, its result written down',
  'calendar.rcd': 'Test button of the residual-current device',
  'calendar.rotor': 'Rotor, shaft and well, wiped clean',
  'calendar.hoses': 'Hoses and taps, brushed through',
  'calendar.seal': 'Main seal, wiped, looked at, thinly greased with silicone grease',

  'heading.care-spills': 'How much water can run out',
  'heading.care-power-cut': 'After a power cut',
  'heading.care-call': 'When to ask',
  'care.call': 'Ask whoever worked on it when one of these holds.',
  'care.call.by': 'Ask {by} when one of these holds.',
  'call.flow': 'Even after cleaning the flow is so low that cleaning is due.',
  'call.damp.canister': 'The paper under it is damp, or a hose end drips: pull its plug first.',
  'call.damp.sump': 'A pipe drips, or the floor under it is damp: pull the plug of its pump first.',
  'call.damp.hanging': 'Water runs over its rim, or the paper below it is damp: pull its plug first.',
  'call.noise': 'It rattles or hums half an hour after it was started.',
  'call.noise.air': 'The air pump hums louder than before, or fewer bubbles rise.',
  'call.device':
    'It trips the residual-current device: leave it unplugged. Wiring is for a licensed electrician.',
  'call.smell': 'It smells of rotten eggs: air the room, do not start it into the tank.',
  'call.animals': 'Animals gasp or look ill: change water, and ask a vet.',
};
