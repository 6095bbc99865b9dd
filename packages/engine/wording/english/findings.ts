/** What findings say. */
export const faultSentences: Readonly<Record<string, string>> = {
  'fault.pump-cannot-lift': "No water flows: the pump's {head} of head does not reach the outlet.",
  'fault.biological-before-mechanical':
    'Water meets the {early} before the {late}, so the biological bed takes dirt that a mechanical one should hold.',
  'fault.fine-before-coarse': 'Water meets the fine {fine} before the coarser {coarse}.',
  'fault.dirt-in-it': '{fault} Of the dirt in the filter {share} lies in it.',
  'fault.ammonium-before-biological':
    'Water meets the {early} before the {late}: while fresh it takes {share} of the ammonium that the bacteria live on, and gives the load back to them when it is full.',
  'fault.chemical-before-biological':
    'Water meets the {early} before the {late}: dirt closes it before its capacity is used.',
  'fault.bypass-past-bed':
    '{share} of the water runs through the {gap} gap beside {chamber} and misses its media.',
  'fault.cut-too-small':
    '{share} of the water runs round the {bed}: the piece leaves {gap} to the wall on each side.',
  'fault.packed-tight':
    'The {bed} is pressed into its room from {times} times as much: water goes through it less easily, and it clogs sooner.',
  'fault.past-bag': '{share} of the water runs past the bag of the {bed} in the corners of its chamber.',
  'fault.slot-past-media': '{share} of the water takes the {gap} slot {way} and misses the media.',
  'fault.dye-early':
    'A tenth of the dye was through after {measured}, and by the map it takes {computed}: more apart than their doubts. Water takes a way past the media that is not on the map.',
  'fault.dye-dead-room':
    'The dye stayed {measured} on average, and the water on the map takes {computed}: {share} of it stands still, or is not there.',
  'fault.partition-leaks': '{share} of the water takes the {way} and meets no media at all.',
  'fault.runs-down-walls':
    'About {share} of the water runs down the walls of {chamber} and misses its media (a prior from the size of the pieces, within a factor of two).',
  'fault.holes-blocked':
    'Of the holes of the drip plate {blocked} are blocked; of those left {spare} may block before water runs over its rim.',
  'fault.drip-plate-tight':
    'Of the holes of the drip plate only {spare} may block before water runs over its rim.',
  'fault.opening-past-media': '{share} of the water enters through the {way} and meets no media.',
  'fault.opening-narrower-than-hose':
    "The {way} is {area}, narrower than the hose's {hose}, and takes {share} of the pump's head.",
  'fault.media-out-of-place': 'A bed of {medium} lies in {chamber}, which is made for {holds}.',
  'fault.bed-too-shallow':
    'The bed of {medium} is {depth} deep at up to {speed}; its pieces or cells measure {piece}, and at least {fewest} of them ought to lie one on another.',
  'fault.dead-chamber': 'The {volume} of {chamber} hold no media.',
  'fault.no-mechanical': 'There is no mechanical medium in the filter.',
  'fault.no-biological': 'There is no biological medium in the filter.',
  'fault.replaced-often':
    'The bed of {medium} clogs and has to be replaced about every {often}, which costs about {cost} {currency} a year.',
  'fault.ammonium-in-salt-water':
    'A bed of {medium} holds no ammonium in salted water and gives back what it has taken.',
  'fault.softener-in-hard-water': 'A bed of {medium} hardly moves water of {alkalinity}.',
  'fault.full-before-replaced':
    'The bed of {medium} is full after {lasts}, and has to be replaced then and not after the {due} that are usual; dirt leaves {share} of it open.',
  'fault.dirt-in-biological-bed':
    'The bed of {medium} holds {dirt} of the caught dirt, and organic carbon leaves its bacteria {rate} of their rate.',
  'fault.hose-too-long': "The {hose}, {length} of {bore} bore, takes {share} of the pump's head.",
  'fault.hose-kinked': 'Kinks or coils in the {hose} cost {head} of head at the clean flow.',
  'fault.barbs-too-narrow': "The {barbs}, {bore} bore in a {hose} hose, take {share} of the pump's head.",
  'fault.outlet-lift':
    "The outlet stands {lift} above the surface: water is really lifted there, which takes {share} of the pump's head.",
  'fault.flow-small':
    "The tank's water goes through {times} times an hour, less than once (common practice, no source).",
  'fault.flow-large':
    "The tank's water goes through {times} times an hour: strong current for still-water fish (common practice, no source).",
  'fault.fed-more-than-carried':
    'The tank is fed {fed}; the filter alone carries {carried} on day {day} after cleaning. It is bound {bound}.',
  'fault.oxygen-starved-outlet':
    'Water leaves the filter with {oxygen} of oxygen on day {day} after cleaning.',
  'fault.water-too-acid': 'At pH {pH} the bacteria work at half of their rate or less, whatever the media.',
  'fault.clogs-soon': 'After {interval} {end}.',
  'fault.overflow-open': '{share} of the water goes over the {way} even with clean media.',
  'fault.spill.intake-hose-off':
    'If the intake hose comes off, {volume} run onto the floor (the surface falls {fall}), at first {flow}: about {time}.',
  'fault.spill.outlet-hose-off-running':
    'If the outlet hose comes off while the pump runs, it empties {volume} onto the floor (the surface falls {fall}), about {flow}: {time}.',
  'fault.spill.outlet-hose-off-stopped':
    'If the outlet hose comes off while the pump stands, the return siphons {volume} back onto the floor (the surface falls {fall}), at first {flow}: about {time}.',
  'fault.spill.power-fails':
    'When the power fails, {volume} run down from the tank (the surface falls {fall}), and below there is room for {room}.',
  'fault.jet-sweeps-tank':
    'The outlet’s jet leaves at {speed} and is faster than {stands} for {reach}, which is the whole tank: its weakest swimmers stand no more for long.',
  'fault.alkalinity-runs-down':
    'At the present feed, nitrification uses {used} of alkalinity (as CaCO3) a week and water changes bring at most {brought}.',
  'fault.measured-differs':
    'The {test} test ({state}) gave {measured}, the models say {computed}: {share} apart, more than their doubts.',
  'fault.measured-differs.from-none':
    'The {test} test ({state}) gave {measured}, the models say {computed}, further apart than their doubts.',
  'fault.measured-below-dirty':
    'Timed as found it gave {measured}. Clean, the models say {computed}, and with media uncleaned for {uncleaned} still {dirty}: dirt in the media does not explain it.',
  'fault.plate-lies-bare': '{share} of the water enters through the {way} and meets no media.',
  'fault.lift-tube-short':
    'The lift tube is {air} high over its air and ends {below} under the surface: from there on the bubbles lift nothing.',
  'fault.space-behind-narrow':
    'Only {space} is clear behind the mat, less than the {least} that let the water come from all of it.',
  'fault.mat-fast':
    'The water goes through the mat at {speed}, faster than the {least} to {most} at which mats are run: dirt is drawn into it.',
  'fault.mat-slow':
    'The water goes through the mat at {speed}, slower than the {least} to {most} at which mats are run.',
  'fault.bed-floats': 'The {medium} does not sink, so rising water cannot carry it as a bed.',
  'fault.bed-not-carried':
    'The water rises at {speed}, too slowly to carry the {medium}, which takes {least}: it lies still and clogs.',
  'fault.bed-washed-up':
    'The water carries the {medium}, {rest} deep at rest, up to {high} in a column of {column}: it packs against the screen.',
  'fault.bed-washed-out':
    'The water rises faster than the {medium} sinks: it is washed against the screen of the {column} column.',
  'fault.carriers-overfull':
    'The carriers fill {fill} of their chamber; more than {most} do not tumble, and gather mud.',
  'fault.screen-too-wide':
    'The screen is {slot} wide and the {medium} is of {piece}: it goes through, into pump and tank.',
  'fault.order-follows-the-water': 'The water meets {order} media, coarse before fine.',
  'fault.little-bypass': 'At most {share} of the water misses a stage that is packed.',
  'fault.claim-contradicts-itself': "The maker's “{claim}” contradicts itself: {detail}",

  'stages.then': '{first}, then {next}',
  'hose.intake': 'intake hose',
  'hose.outlet': 'outlet hose',
  'barbs.intake': 'intake barbs',
  'barbs.outlet': 'outlet barbs',
  'place.cut': 'gap round {bed}',
  'place.corners': 'corners of the bag of {bed}',
  'place.tray-lip': 'at the lip of {chamber}',
  'place.end-cap': 'at the end cap of {chamber}',
  'place.partition': 'at the partition beside {chamber}',
  'place.other': 'past {chamber}',
  'bed-in-chamber': '{medium} in {chamber}',
  'bed-of-its-own': '{medium} ({chamber})',

  'bound.area': 'by the area open to bacteria',
  'bound.flow': 'by the flow',
  'bound.oxygen': 'by oxygen',
  'bound.alkalinity': 'by the water’s pH and alkalinity',
  'bound.nitrite': 'by nitrite',
  'bound.ammonia-toxicity': 'by un-ionized ammonia',
  'bound.none': 'by nothing',
  'bound.with-why': '{by}: {why}',
  'bound.area.why': 'more of them have no room to live on the media',
  'bound.flow.why': 'more water does not come past the bacteria',
  'bound.oxygen.why': 'the bacteria use up what the water brings them',
  'bound.alkalinity.why': 'the bacteria run short of carbonate',
  'bound.nitrite.why':
    'the bacteria that turn it into nitrate come to their limit before those that make it of ammonia',
  'bound.ammonia-toxicity.why': 'at this pH what the bacteria leave of ammonia becomes harmful first',

  'fed.stated': '{feed}',
  'fed.assumed': '{feed} (assumed from its stock, within a factor of {factor})',
  'fed.assumed-roughly': '{feed} (assumed from its stock)',

  'end.none': 'nothing has happened',
  'end.overflow':
    'the {place} opens: dirty water then goes past the media, though {share} of the clean flow still reaches the tank',
  'end.slows':
    'the {place} has clogged and lets a third less water through, and {share} of the clean flow is left at the tank',
  'end.past-gap':
    'the {place} has clogged; from then on a third of its water and more goes past it through the gap, so a timed jug will not show it: {share} of the clean flow still reaches the tank',
  'end.past-otherwise':
    'the {place} has clogged; from then on a third of its water and more goes past it another way, so a timed jug will not show it: {share} of the clean flow still reaches the tank',
};

/** What cures them, and what a cure gains and gives up. */
export const cureSentences: Readonly<Record<string, string>> = {
  'cure.pump-cannot-lift': 'Lower the outlet or fit a pump with more head.',
  'cure.biological-before-mechanical': 'Put the mechanical media first in the way of the water.',
  'cure.fine-before-coarse': 'Let the water go through the coarser medium first.',
  'cure.chemical-before-biological': 'Put chemical media behind the biological ones.',
  'cure.bypass-past-bed': 'Close the gap with a thin removable strip of silicone sheet or closed-cell foam.',
  'cure.bypass-past-bed.end-caps':
    'Renew the seals of the end caps, or cut a foam sleeve 2 to 3 mm (0.08 to 0.12 in) over length so that they press on it.',
  'cure.round-seat-leaks': 'Renew the seal ring of that seat; grease it thinly with silicone grease.',
  'cure.cut-too-small':
    'Cut a new piece 2 to 3 mm (about 1/10 in) larger than its room each way, so that it sits against the walls.',
  'cure.packed-tight': 'Take out floss until the rest lies loose.',
  'cure.past-bag':
    'Fill the bag less tightly and spread it into the corners, or lay the media in without a bag.',
  'cure.slot-past-media': 'Close the slot with a removable strip or a new seal.',
  'cure.dye-early':
    'Look for the gap with a gauge at every seat, lip and edge, put what is found on the map, and repeat the test.',
  'cure.dye-dead-room':
    'Check the volumes on the map and the flow of the test first, then look for corners that the water does not reach.',
  'cure.partition-leaks': 'Seal the edge of the partition with a removable strip.',
  'cure.runs-down-walls':
    'Use smaller pieces, or lay a ring or grid half way down that leads the water back from the walls.',
  'cure.holes-blocked': 'Clear every hole, and catch what blocks them on a pad above the plate.',
  'cure.drip-plate-tight':
    'Keep the holes clear and the pad above them clean; more holes only where the plate can be replaced.',
  'cure.opening-past-media':
    'Cover these slots, as long as three times the area of the pump’s own inlet stays open (common practice, no source).',
  'cure.opening-narrower-than-hose': 'Clear or widen it where no pressure wall or seal is cut.',
  'cure.bed-too-shallow': 'Make it {depth} deep.',
  'cure.bed-too-shallow.no-room':
    'There is no room to make it deeper: give it a chamber of its own, or leave it out.',
  'cure.media-out-of-place':
    'Lay it in a chamber that is made for it, or keep it on purpose: plans put no more of it there, and its figures are those of the same medium elsewhere.',
  'cure.dead-chamber': 'Use the room, or leave it empty on purpose.',
  'cure.no-mechanical': 'Add a mechanical medium.',
  'cure.no-biological': 'Add a biological medium.',
  'cure.replaced-often.chemical':
    'Put mechanical media ahead of it, and take it out of the filter while nothing has to be taken up.',
  'cure.replaced-often.ahead': 'Put coarser media ahead of it.',
  'cure.replaced-often': 'Use washable foam in its place, or put coarser media ahead of it.',
  'cure.ammonium-in-salt-water': 'Take it out.',
  'cure.softener-in-hard-water': 'Take it out, or soften the water first.',
  'cure.full-before-replaced': 'Use more of it, behind the other media.',
  'cure.dirt-in-biological-bed': 'Catch more ahead of it: a finer or deeper mechanical bed.',
  'cure.hose-too-long': 'Shorten it; shown here for {length}.',
  'cure.hose-kinked': 'Lay the hose in wide bends without kinks.',
  'cure.barbs-too-narrow': 'Fit barbs with a bore as wide as the hose where the ports allow it.',
  'cure.outlet-lift': 'Bring the outlet under the surface; keep the siphon break.',
  'cure.flow-small': 'A larger pump or a second filter; more media do not help here.',
  'cure.flow-large': 'Spread the outlet over a spray bar or turn it to the glass; throttle only the outlet.',
  'cure.fed-more-than-carried':
    'Feed less, re-pack for more, or leave the rest to walls, plants and water changes and test for ammonia and nitrite.',
  'cure.oxygen-starved-outlet': 'Clean sooner, raise the flow, or let the outlet break the surface.',
  'cure.water-too-acid':
    'Test alkalinity; raise it slowly if the animals are not of soft, acid water, which has its own slow bacteria.',
  'cure.clogs-soon':
    'More area or a coarser medium where the dirt is caught; a pre-filter that is easy to reach.',
  'cure.overflow-open': 'Use a coarser or thinner medium ahead; never block the overflow.',
  'cure.spill.intake-hose-off':
    'Secure both hose ends with clamps, set the filter in a tray with an alarm, and drill a small air hole into the intake tube a few centimetres below the surface, or raise its mouth. Shut the taps before the hoses are opened.',
  'cure.spill.outlet-hose-off-running':
    'Secure both hose ends with clamps, set the filter in a tray with an alarm, and raise the intake’s mouth or give it an air hole: the pump then draws air and stops giving.',
  'cure.spill.outlet-hose-off-stopped':
    'Drill two small holes into the return just below the surface and keep them clear, or raise its mouth. A check valve is a second line only: it jams.',
  'cure.spill.power-fails':
    'Drill an air hole into the return just below the surface, or raise its mouth; keep the sump emptier; and try it: switch off and watch. Never rely on a check valve alone, and never block the emergency drain.',
  'cure.jet-sweeps-tank':
    'Spread the outlet over a spray bar, turn it to the glass or the surface, or throttle only the outlet.',
  'cure.alkalinity-runs-down': 'Test alkalinity weekly; change more water or buffer it before the pH falls.',
  'cure.measured-differs':
    'Repeat the test; then look for what the description leaves out: film in the hose, a worn impeller, a gap not measured.',
  'cure.measured-below-dirty':
    'Clean the hoses and time it again before anything else is changed. Then, unplugged, look for what is left: film in the hoses, the impeller, a blocked strainer, air in the filter.',
  'cure.measured-below-dirty.air':
    'Time the air first: a clogged stone or line, a worn membrane or a check valve that sticks takes air, and water with it. Then look for a tube that is loose or blocked.',
  'cure.plate-lies-bare': 'Level the gravel over it; a stone or a mesh under the surface keeps diggers off.',
  'cure.lift-tube-short': 'Lengthen the tube by {length}, up to the surface.',
  'cure.space-behind-narrow': 'Move the mat forward, or put strips behind it that hold it off the pane.',
  'cure.mat-fast': 'Less air or a smaller pump; a larger mat.',
  'cure.mat-slow': 'More air, a longer lift tube or a second one, where the tank needs more flow.',
  'cure.bed-floats': 'Use sand or other grains that sink.',
  'cure.bed-not-carried': 'More flow: a larger pump, wider hoses; or finer grains.',
  'cure.bed-washed-up': 'Take media out until {depth} are left at rest, or throttle the outlet.',
  'cure.bed-washed-out': 'Less flow, or coarser grains.',
  'cure.carriers-overfull':
    'Take carriers out until {good} is filled; keep them wet, they carry the bacteria.',
  'cure.screen-too-wide': 'Fit a screen that is narrower than the smallest piece, over a larger area.',
  'cure.order-follows-the-water': 'Keep the order.',
  'cure.little-bypass': 'Keep the seals as they are.',
  'cure.claim-contradicts-itself':
    'Ask the maker which one is meant; go by what was measured or computed here.',

  'weighed.cure': '{cure} {weighed}',
  'weighed.gained': 'Gained: {changes}.',
  'weighed.given-up': 'Given up: {changes}.',
  'weighed.loses': 'By itself this loses more here than it gains: see the plans.',
  'weighed.nothing': 'By itself this gains nothing here on the whole: see the plans.',
  'weighed.either': 'Weigh which of the two this tank needs more.',
  'weighed.gains': 'On the whole it gains more than it gives up.',
  'weighed.feed.more': '{percent} % more feed carried',
  'weighed.feed.less': '{percent} % less feed carried',
  'weighed.feed.from-none': 'feed carried where there is none',
  'weighed.flow.more': '{percent} % more flow',
  'weighed.flow.less': '{percent} % less flow',
  'weighed.flow.from-none': 'flow where there is none',
  'weighed.interval': 'cleaning after {after} in place of {before}',
};
