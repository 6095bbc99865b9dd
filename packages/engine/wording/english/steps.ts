/** What to do to carry a plan out, as the plans' lists have it. */
export const planStepSentences: Readonly<Record<string, string>> = {
  'plan-step.get': 'Get {volume} of {medium}; rinse it.',
  'plan-step.renew':
    'Have {volume} of fresh {medium} at hand, which cleaning takes in any case: what is in the filter of it is used up.',
  'plan-step.unplug':
    'Unplug every device in the tank before hands go into the water; never by the switch alone.',
  'plan-step.plug-in':
    'Plug in with a drip loop, through a residual-current device; local codes and licensed electricians decide on all wiring.',
  'plan-step.open.canister':
    'Close the taps, lift the hose ends above the tank’s surface, and open the filter over a tray.',
  'plan-step.open.sump':
    'Let the water come down and see that the box holds it; lift the media out, with what holds them, over a bucket.',
  'plan-step.open.hanging':
    'Let the box run empty, lift it off the rim with both hands, and work on it over a tray.',
  'plan-step.open.submerged':
    'Put a bag or bowl under the filter before it leaves the water, so that the dirt stays in it.',
  'plan-step.close.canister.seal':
    'Clean and lightly grease the main seal with silicone grease; close all clips evenly, by hand.',
  'plan-step.close.canister.leaks':
    'Test for leaks on dry paper at installed height before it goes back under a tank.',
  'plan-step.close.sump':
    'Set everything back, fill to the mark, start the pump, then pull its plug once: what runs down must stay in the box, and the holes that break the siphon must draw air.',
  'plan-step.close.hanging':
    'Hang it level, fill the box with tank water before it starts, and see that the overflow stays free.',
  'plan-step.close.submerged': 'Let the air out under water before it starts; it must never run dry.',
  'plan-step.open.air':
    'Take the air line off, and put a bag or bowl under the filter before it leaves the water, so that the dirt stays in it.',
  'plan-step.open.built-in':
    'Draw the lift tube or the pump out; what is built into the tank stays there, and at most a third of its media is touched at a time.',
  'plan-step.close.air':
    'Put lift tube and air line on firmly; the air pump stands above the water, or its line has a check valve.',
  'plan-step.close.built-in':
    'See that no water goes round the media, and that lift tube or pump sits tightly.',
  'plan-step.take-out':
    'Take the media out in order, note their places, and keep them wet in a bucket of tank water.',
  'plan-step.cut-foam':
    'Cut foam {least} to {most} oversize, away from the hand, with a cut-resistant glove on the other.',
  'plan-step.leave-empty': 'Leave {chamber} empty.',
  'plan-step.pack': 'Pack {chamber}: {layers}.',
  'plan-step.pack-upright': 'Pack {chamber} from the bottom: {layers}.',
  'plan-step.pack-tube': 'Pack {chamber} from the tube outward: {layers}.',
  'plan-step.layer': '{depth} of {medium}',
  'plan-step.then': '{first}, then {next}',
  'plan-step.keep-bacteria':
    'Keep at least a third of the media that bacteria live on as it was for four weeks, in the filter or in a bag in the tank; never replace all at once.',
  'plan-step.measure':
    'Measure the flow as before; test ammonia and nitrite on days 1, 3, 5, 7 and 14; feed lightly in the first week.',
  'plan-step.turn-head':
    'Turn the head by half a turn; only where ring, clips, ports and priming tube all mate both ways. Mark intake and outlet anew.',
  'plan-step.seal-gaps':
    'Lay a removable strip of food-grade silicone sheet or closed-cell foam beside the media of each chamber; leave designed reliefs free.',
  'plan-step.renew-end-seals':
    'Fit new seal rings to end caps and seats, of the size that was measured; clean the grooves, grease them thinly with silicone grease, press home by hand.',
  'plan-step.trim-sleeve':
    'Cut the foam sleeve 2 to 3 mm (0.08 to 0.12 in) longer than the space between the end caps, ends square, so that both press on it.',
  'plan-step.turn-cartridge':
    'Rinse the cartridge and turn it by half a turn, so that the side that lay away from the inlet loads next.',
  'plan-step.more-socks':
    'Hang one more sock in a ring of its own beside the others; keep the rim that a full sock spills over free.',
  'plan-step.clear-holes':
    'Lift the drip plate out and clear every hole with a brush or a wooden skewer, never wider than it is.',
  'plan-step.close-upper-slots':
    'Cover the upper slots; leave at least three times the area of the pump’s own inlet open below.',
  'plan-step.hose-bore':
    'Fit hose of {bore} bore with barbs and clips that match it; only where the ports of the head and the fittings take barbs of that bore.',
  'plan-step.level-gravel':
    'Level the gravel over the bare plate, from the front to the back, and lay a mesh or a flat stone where animals dig.',
  'plan-step.lengthen-lift-tube':
    'Put a longer tube, or a piece on the tube, so that it ends at the water surface; keep its bore.',
  'plan-step.siphon-hole':
    'Drill an air hole, 4 to 6 mm (0.16 to 0.24 in) wide, into each tube that hangs into the tank, {depth} below the surface (common practice, no source); dry it, take the chips out, and look at every cleaning that it is open.',
  'plan-step.shorten-hose': 'Cut the hoses to {length} each, ends square and clean.',
  'plan-step.lower-outlet':
    'Lower the outlet under the surface; drill or keep a small siphon break just below the water line.',
};
