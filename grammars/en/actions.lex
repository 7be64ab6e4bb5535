# Verbs of the kitchen. The value is the verb that a written method would use. Verbs that are first of all the
# names of foods (butter, oil, salt) stand at the end of foods.lex, and those that are first of all things
# (spoon, ladle, plate) at the end of things.lex, so that the thing is the likelier reading.
# SPDX-License-Identifier: MIT

# --- putting in -----------------------------------------------------------------------------------------------
@tag ACTION
@forms verb
@marks puts
add	add		add in | add on | add to | chuck | chuck in | whack in | bung in | pitch in | introduce | heap in | fire in | mound in
go in with	add		go ahead with	verb:goes,going,went,gone
go in	add		go into | go right in | go on	verb:goes,going,went,gone
go on top	top	puts	go over the top | go all over	verb:goes,going,went,gone
come in with	add		follow with	verb:comes,coming,came,come
hit it with	add		hit that with | hit this with | hit them with	verb:hits,hitting,hit,hit
throw in	add		throw | throw into	verb:throws,throwing,threw,thrown
get in	add		get in there	verb:gets,getting,got,gotten
toss in	add		toss into | dump | dump in | empty in | empty | tumble in
put	put		put in | put into | put on | put back	verb:puts,putting,put,put
pop	put		pop in | pop into | pop on | plop in | slap on	verb2
stick in	put		stick into	verb:sticks,sticking,stuck,stuck
bung	put		whack | whack on | shove | shove in | plonk in | plonk | pile in | load | load up | ease in | stack in | slap | slap down
plop	put			verb2
tip	tip		tip in | tip into | tip out	verb2
pour	pour		pour in | pour over | pour into | pour on
slip in	add		slip into | drop in | drop into	verb2
lob in	add		glug in	verb2
drop	drop			verb2
slide	slide		slide in | slide into	verb:slides,sliding,slid,slid
sling in	put			verb:slings,slinging,slung,slung
place	place		place in | place on | position
lay	lay		lay out | lay down | lay on	verb:lays,laying,laid,laid
set	set		set down | set out	verb:sets,setting,set,set
set aside	set aside	waits	put aside | set to one side | put to one side | set to the side	verb:sets,setting,set,set
arrange	arrange		line up
transfer	transfer			verb2
move	transfer		move over | shift
return	return		add back | add back in
tuck	tuck		tuck in | nestle | nestle in | snuggle in | wedge in
submerge	submerge		immerse
drizzle	drizzle	puts finishes	zigzag | zigzag over | drizzle in | drizzle over
dribble	drizzle	puts	dribble in | trickle | trickle in | stream in
splash in	add		splash | slosh in | squirt | squirt in
ladle in	ladle		ladle over
spoon	spoon		spoon in | spoon over | spoon on | dollop | dollop on | scoop
crack	crack		crack in
break	break	prep	break up	verb:breaks,breaking,broke,broken
break in	break	prep	break into	verb:breaks,breaking,broke,broken
squeeze	squeeze		squeeze in | squeeze over
incorporate	mix	puts mixes	work in
work it in	mix	puts mixes	work that in | work this in | work them in
fill	fill		fill up
stuff	stuff	puts prep
pack	pack	puts prep	pack in | pack into | pack down
mound	mound	puts	mound up
pile	pile	puts	pile up | heap | heap up
layer	layer	puts prep	layer up | layer in
stack	layer	puts	stack up
top	top	puts finishes prep		verb2
top off	top	puts finishes prep	top up | top with	none
crown	top	finishes puts
replace	replace
substitute	replace
swap	replace		swap out | swap in | sub in	verb2
supplement	add

# --- cutting and taking apart ---------------------------------------------------------------------------------
@marks cuts prep
chop	chop		chop up	verb2
give it a chop	chop		give that a chop | give them a chop | give those a chop | give it a rough chop | give that a rough chop | give them a rough chop | give those a rough chop | give it a good chop | give it a quick chop	verb:gives,giving,gave,given
cut	cut	pieces	cut up | cut into | cut out | cut off	verb:cuts,cutting,cut,cut
cut in half	halve		cut in two | cut into halves | cut in halves	verb:cuts,cutting,cut,cut
cut in quarters	quarter		cut into quarters | cut in four | cut into four | cut in fours	verb:cuts,cutting,cut,cut
slice	slice		slice up | slice through | slice into
dice	dice	early	dice up
cube	cube	early	cube up
mince	mince	early	mince up
grate	grate		grate in | grate over | microplane
shred	shred		shred up	verb2
shave	shave
julienne	julienne
halve	halve
quarter	quarter
zest	zest
peel	peel	early	peel off | pare | peel away
trim	trim		trim off	verb2
tidy up	trim	cuts
snip	snip		snip in	verb2
run a knife through	chop		run the knife through | run your knife through	verb:runs,running,ran,run
tear	tear		tear up | tear in | tear apart	verb:tears,tearing,tore,torn
rip	tear		rip up	verb2
pull apart	shred
pull	pull
shell	shell
husk	husk
shuck	shuck
hull	hull
debeard	debeard		de-beard
core	core
seed	seed		deseed
de seed	seed			verb-last
pit	pit			verb2
destone	pit
de stone	pit			verb-last
stone	pit
stem	stem		destem	verb2
de stem	stem			verb2-last
devein	devein
de vein	devein			verb-last
bone	bone
debone	debone
de bone	bone			verb-last
skin	skin			verb2
scale	scale
gut	gut			verb2
fillet	fillet
butterfly	butterfly
mark out	mark	cuts	mark into | mark it into | mark it out | mark them out
spatchcock	spatchcock
carve	carve	cuts	carve up
joint	joint
segment	segment
supreme	segment
score	score		notch
slash	slash
slit	slit			verb:slits,slitting,slit,slit
bruise	bruise
crush	crush		crush up
smack	crush		whack flat | whack it flat | whack them flat | whack that flat | smack it flat | smack them flat
give it a whack	crush		give them a whack | give that a whack | give those a whack | give it a bash | give them a bash | give that a bash | give those a bash | give it a bit of a bash | give them a bit of a bash	verb:gives,giving,gave,given
squash	crush		squash down
smash	smash		smash up | bash
mash	mash	early	mash up | mash down
pound	pound		pound out | bash out
flatten	flatten		flatten out
make it flat	flatten		make them flat | make that flat | pat it flat	none
grind	grind		grind up | grind in | grind over	verb:grinds,grinding,ground,ground
crumble	crumble		crumble up | crumble in | crumble over
flake	flake		flake up
crack open	crack
split	split		split open | split up	verb:splits,splitting,split,split
separate	separate	prep
divide	divide	prep	divide up | portion | portion out | divvy up | divvy it up | share out | share it out | share it between | share them between | share that between
spiralize	spiralize		spiralise
stamp out	cut	cuts	punch out
cut the ends	trim	cuts prep	cut the tips | cut the ends off | cut the tips off | cut off the ends	verb:cuts,cutting,cut,cut
top and tail	trim	cuts prep		verb:tops and tails,topping and tailing,topped and tailed,topped and tailed
chiffonade	shred
hollow out	hollow	cuts prep
pick	pick	cuts prep	pick off | pick over
pluck	pick
strip	strip	cuts prep		verb2

# --- mixing ---------------------------------------------------------------------------------------------------
@marks mixes
mix	mix		mix well | mix in | mix up | mix together | mix through
stir	stir		keep it moving | keep them moving | keep that moving | keep everything moving | stir in | stir together | stir up | stir through | stir around	verb2
keep stirring	stir		keep mixing	verb:keeps,keeping,kept,kept
keep whisking	whisk			verb:keeps,keeping,kept,kept
give it a stir	stir		give that a stir | give this a stir | give them a stir | give everything a stir | give it a good stir | give that a good stir | give it a mix | give that a mix | give it a good mix | give that a good mix | give everything a good mix | give everything a good stir | give it a quick stir | give it a toss | give it a whisk | give that a whisk | give it a good toss | give it a good whisk | give it a quick mix | give it a quick toss | give it a quick whisk | give it a little stir | give it a little mix | give it a little toss | give it a little whisk | give it a nice stir | give it a nice mix | give it a nice toss | give it a nice whisk | give it a really good stir | give it a really good mix | give it a really good toss | give it a really good whisk | give it a big stir | give it a big mix | give it a big toss | give it a big whisk | give it a gentle stir | give it a gentle mix | give it a gentle toss | give it a gentle whisk | give it a final stir | give it a final mix | give it a final toss | give it a final whisk | give that a toss | give that a good toss | give that a good whisk | give that a quick stir | give that a quick mix | give that a quick toss | give that a quick whisk | give that a little stir | give that a little mix | give that a little toss | give that a little whisk | give that a nice stir | give that a nice mix | give that a nice toss | give that a nice whisk | give that a really good stir | give that a really good mix | give that a really good toss | give that a really good whisk | give that a big stir | give that a big mix | give that a big toss | give that a big whisk | give that a gentle stir | give that a gentle mix | give that a gentle toss | give that a gentle whisk | give that a final stir | give that a final mix | give that a final toss | give that a final whisk | give this a mix | give this a toss | give this a whisk | give this a good stir | give this a good mix | give this a good toss | give this a good whisk | give this a quick stir | give this a quick mix | give this a quick toss | give this a quick whisk | give this a little stir | give this a little mix | give this a little toss | give this a little whisk | give this a nice stir | give this a nice mix | give this a nice toss | give this a nice whisk | give this a really good stir | give this a really good mix | give this a really good toss | give this a really good whisk | give this a big stir | give this a big mix | give this a big toss | give this a big whisk | give this a gentle stir | give this a gentle mix | give this a gentle toss | give this a gentle whisk | give this a final stir | give this a final mix | give this a final toss | give this a final whisk | give them a mix | give them a toss | give them a whisk | give them a good stir | give them a good mix | give them a good toss | give them a good whisk | give them a quick stir | give them a quick mix | give them a quick toss | give them a quick whisk | give them a little stir | give them a little mix | give them a little toss | give them a little whisk | give them a nice stir | give them a nice mix | give them a nice toss | give them a nice whisk | give them a really good stir | give them a really good mix | give them a really good toss | give them a really good whisk | give them a big stir | give them a big mix | give them a big toss | give them a big whisk | give them a gentle stir | give them a gentle mix | give them a gentle toss | give them a gentle whisk | give them a final stir | give them a final mix | give them a final toss | give them a final whisk | give those a stir | give those a mix | give those a toss | give those a whisk | give those a good stir | give those a good mix | give those a good toss | give those a good whisk | give those a quick stir | give those a quick mix | give those a quick toss | give those a quick whisk | give those a little stir | give those a little mix | give those a little toss | give those a little whisk | give those a nice stir | give those a nice mix | give those a nice toss | give those a nice whisk | give those a really good stir | give those a really good mix | give those a really good toss | give those a really good whisk | give those a big stir | give those a big mix | give those a big toss | give those a big whisk | give those a gentle stir | give those a gentle mix | give those a gentle toss | give those a gentle whisk | give those a final stir | give those a final mix | give those a final toss | give those a final whisk | give these a stir | give these a mix | give these a toss | give these a whisk | give these a good stir | give these a good mix | give these a good toss | give these a good whisk | give these a quick stir | give these a quick mix | give these a quick toss | give these a quick whisk | give these a little stir | give these a little mix | give these a little toss | give these a little whisk | give these a nice stir | give these a nice mix | give these a nice toss | give these a nice whisk | give these a really good stir | give these a really good mix | give these a really good toss | give these a really good whisk | give these a big stir | give these a big mix | give these a big toss | give these a big whisk | give these a gentle stir | give these a gentle mix | give these a gentle toss | give these a gentle whisk | give these a final stir | give these a final mix | give these a final toss | give these a final whisk | give everything a mix | give everything a toss | give everything a whisk | give everything a good toss | give everything a good whisk | give everything a quick stir | give everything a quick mix | give everything a quick toss | give everything a quick whisk | give everything a little stir | give everything a little mix | give everything a little toss | give everything a little whisk | give everything a nice stir | give everything a nice mix | give everything a nice toss | give everything a nice whisk | give everything a really good stir | give everything a really good mix | give everything a really good toss | give everything a really good whisk | give everything a big stir | give everything a big mix | give everything a big toss | give everything a big whisk | give everything a gentle stir | give everything a gentle mix | give everything a gentle toss | give everything a gentle whisk | give everything a final stir | give everything a final mix | give everything a final toss | give everything a final whisk	verb:gives,giving,gave,given
combine	combine
bring together	combine		bring it together | bring that together | bring the dough together | bring it all together | bring everything together	verb:brings,bringing,brought,brought
blend	blend	mixes prep	blend up | blend in | blend together
puree	puree	mixes prep	liquidize | liquidise
blitz	blitz	mixes prep	blitz up | whizz | whizz up | buzz | pulverize | pulverise
whiz	blitz	mixes prep	whiz up | zap	verb2
hit it with the blender	blend	mixes	hit it with the stick blender | hit it with a stick blender | hit it with a blender | hit it with the hand blender | hit it with a hand blender | hit it with the immersion blender | hit that with the blender | hit that with the stick blender | hit them with the blender	verb:hits,hitting,hit,hit
give it a blitz	blend	mixes	give it a whizz | give it a whiz | give it a blend | give that a blitz | give that a whizz | give that a blend | give everything a blitz	verb:gives,giving,gave,given
process	process
pulse	pulse
whisk	whisk	mixes prep	whisk in | whisk up | whisk together
beat	beat	mixes prep	beat in | beat up | beat together	verb:beats,beating,beat,beaten
give it a beat	beat	mixes prep	give them a beat | give that a beat | give those a beat | give it a little beat | give them a little beat | give it a good beat | give it a quick beat | give them a quick beat	verb:gives,giving,gave,given
whip	whip	mixes prep	whip up | whip in	verb2
fold	fold		fold in | fold through | fold together | fold into
toss	toss		toss together | toss around | toss through
knead	knead		work the dough | work it until | work it till | work it for | work it well | work it smooth | knead in | knead together
work	knead	light	work together | work through
rub in	rub in		rub together | rub into	verb2
rub	rub	early	rub all over | rub on | rub over	verb2
massage	massage		massage in | massage into
give it a massage	massage		give that a massage | give them a massage	verb:gives,giving,gave,given
cut in	cut	pieces cuts prep	cut in about | cut in nice	verb:cuts,cutting,cut,cut
emulsify	emulsify
dissolve	dissolve	mixes prep	dissolve in
slake	slake	mixes prep
muddle	muddle
agitate	stir		swish | swish around | swirl around
swirl	swirl		swirl in | swirl through | ripple through
shake	shake		shake up | shake together | shake off	verb:shakes,shaking,shook,shaken
give it a shake	shake		give that a shake | give the pan a shake | give them a shake | give it a good shake | give it a quick shake | give it a little shake | give it a nice shake | give it a really good shake | give it a big shake | give it a gentle shake | give it a final shake | give that a good shake | give that a quick shake | give that a little shake | give that a nice shake | give that a really good shake | give that a big shake | give that a gentle shake | give that a final shake | give this a shake | give this a good shake | give this a quick shake | give this a little shake | give this a nice shake | give this a really good shake | give this a big shake | give this a gentle shake | give this a final shake | give them a good shake | give them a quick shake | give them a little shake | give them a nice shake | give them a really good shake | give them a big shake | give them a gentle shake | give them a final shake | give those a shake | give those a good shake | give those a quick shake | give those a little shake | give those a nice shake | give those a really good shake | give those a big shake | give those a gentle shake | give those a final shake | give these a shake | give these a good shake | give these a quick shake | give these a little shake | give these a nice shake | give these a really good shake | give these a big shake | give these a gentle shake | give these a final shake | give everything a shake | give everything a good shake | give everything a quick shake | give everything a little shake | give everything a nice shake | give everything a really good shake | give everything a big shake | give everything a gentle shake | give everything a final shake	verb:gives,giving,gave,given
loosen	loosen		loosen up | ease | ease away | prise away
thin	thin		thin out | thin down	verb2
let down	thin		let it down with | let that down with | let it down	verb:lets,letting,let,let
water down	thin
homogenize	mix		homogenise
churn	churn
fluff	fluff		fluff up
turn through	toss
scramble	scramble	mixes heats fries prep

# --- coating, shaping -----------------------------------------------------------------------------------------
@marks
coat	coat	mixes prep	coat in | cover in
dredge	dredge	mixes prep	dredge in
dip	dip	puts	dip in | dip into	verb2
breadcrumb	bread	prep
spread	spread	puts	spread out | spread over | spread on | spread around	verb:spreads,spreading,spread,spread
distribute	spread	puts	distribute over
smear	spread	puts	smear on | slather | slather on | lather on | daub
smooth	smooth		smooth off | smooth out | smooth over | smooth down | even out
level	level		level off | level out
make a well	make		make a hole | make yourself a hole | make yourself a well | make a little well | make some wells | make some holes	verb:makes,making,made,made
brush	brush	puts	brush on | brush over
moisten	brush	puts	dampen
baste	baste	puts	baste over
paint	brush	puts	paint on
glaze	glaze	puts prep
spray	spray	puts	mist | spritz
pipe	pipe	puts	pipe out | pipe in | pipe on
frost	frost	puts finishes prep
dress	dress	puts finishes prep
shape	shape		shape into | form | form into | mold | mould | mold into | fashion | shape up
roll	roll		roll up | roll out | roll in | roll into | roll over	verb
ball up	shape
press	press	prep	press down | press in | press into | press out | press together | squish | smush
pat	pat dry			verb2
pat down	press		pat in	verb2
pat out	pat out		pat it out | pat that out | pat them out | pat it down flat | pat it out flat	verb2
pinch	pinch		pinch together
tap				verb2
knock on	tap		knock on it | knock on the bottom	verb:knocks,knocking,knocked,knocked
scrunch
crimp	crimp		crimp up
seal	seal		seal up | close up
pleat	pleat
braid	braid		plait
twist	twist		twist up
tie	tie		tie up	verb:ties,tying,tied,tied
truss	tie
secure	tie		pin
thread	thread		thread on | skewer
wrap	wrap		wrap up | wrap in | wrap around	verb2
fold over	fold		fold up
line	line	early	line with
poke	poke		poke into
prick	prick		pierce | dock
make holes	prick		make little holes | make small holes | make a few holes | poke holes | poke some holes | poke a few holes	verb:makes,making,made,made
knock back	knock back		knock down
punch	punch		punch down
deflate	knock back		knock the air out | knock the air out of
stretch	stretch		stretch out | stretch and fold	verb
laminate	laminate
assemble	assemble
put together	assemble			verb:puts,putting,put,put
build	assemble		build up	verb:builds,building,built,built
sandwich	sandwich		sandwich together
unmold	unmold	takes	unmould
turn out	turn out	takes
invert	invert
rough up	rough up
crisscross	score	cuts
decorate	decorate	finishes garnishes	pretty up
stud	stud	puts prep		verb2
bard	bard	puts prep

# --- heat -----------------------------------------------------------------------------------------------------
@marks heats
cook	cook	heats prep	cook off | cook out | cook up | cook through | cook away | cook on
precook	cook	heats prep	parcook
pre cook	cook	heats prep	par cook	verb-last
fry	fry	heats fries prep	fry off | fry up
pan fry	pan-fry	heats fries prep		verb-last
stir fry	stir-fry	heats fries prep		verb-last
deep fry	deep-fry	heats fries deep prep		verb-last
shallow fry	shallow-fry	heats fries prep		verb-last
air fry	air-fry	heats prep		verb-last
dry fry	toast	heats prep		verb-last
saute	saute	heats fries prep	saute off	verb:sautes,sauteing,sauteed,sauteed
sear	sear	heats fries prep	sear off | blister
brown	brown	heats fries prep	brown off | brown up | get a bit of colour on it | get a bit of colour on them | get a bit of colour on that | get a bit of colour on those | get a bit of colour on each side | get a bit of colour on both sides | get a bit of colour on all sides | get a bit of color on it | get a bit of color on them | get a bit of color on that | get a bit of color on those | get a bit of color on each side | get a bit of color on both sides | get a bit of color on all sides | get a little colour on it | get a little colour on them | get a little colour on that | get a little colour on those | get a little colour on each side | get a little colour on both sides | get a little colour on all sides | get a little color on it | get a little color on them | get a little color on that | get a little color on those | get a little color on each side | get a little color on both sides | get a little color on all sides | get some colour on it | get some colour on them | get some colour on that | get some colour on those | get some colour on each side | get some colour on both sides | get some colour on all sides | get some color on it | get some color on them | get some color on that | get some color on those | get some color on each side | get some color on both sides | get some color on all sides | get a nice colour on it | get a nice colour on them | get a nice colour on that | get a nice colour on those | get a nice colour on each side | get a nice colour on both sides | get a nice colour on all sides | get a nice color on it | get a nice color on them | get a nice color on that | get a nice color on those | get a nice color on each side | get a nice color on both sides | get a nice color on all sides | get a good colour on it | get a good colour on them | get a good colour on that | get a good colour on those | get a good colour on each side | get a good colour on both sides | get a good colour on all sides | get a good color on it | get a good color on them | get a good color on that | get a good color on those | get a good color on each side | get a good color on both sides | get a good color on all sides | put a bit of colour on it | put a bit of colour on them | put a bit of colour on that | put a bit of colour on those | put a bit of colour on each side | put a bit of colour on both sides | put a bit of colour on all sides | put a bit of color on it | put a bit of color on them | put a bit of color on that | put a bit of color on those | put a bit of color on each side | put a bit of color on both sides | put a bit of color on all sides | put a little colour on it | put a little colour on them | put a little colour on that | put a little colour on those | put a little colour on each side | put a little colour on both sides | put a little colour on all sides | put a little color on it | put a little color on them | put a little color on that | put a little color on those | put a little color on each side | put a little color on both sides | put a little color on all sides | put some colour on it | put some colour on them | put some colour on that | put some colour on those | put some colour on each side | put some colour on both sides | put some colour on all sides | put some color on it | put some color on them | put some color on that | put some color on those | put some color on each side | put some color on both sides | put some color on all sides | put a nice colour on it | put a nice colour on them | put a nice colour on that | put a nice colour on those | put a nice colour on each side | put a nice colour on both sides | put a nice colour on all sides | put a nice color on it | put a nice color on them | put a nice color on that | put a nice color on those | put a nice color on each side | put a nice color on both sides | put a nice color on all sides | put a good colour on it | put a good colour on them | put a good colour on that | put a good colour on those | put a good colour on each side | put a good colour on both sides | put a good colour on all sides | put a good color on it | put a good color on them | put a good color on that | put a good color on those | put a good color on each side | put a good color on both sides | put a good color on all sides
color	brown	heats fries	colour
sweat	sweat	heats fries prep	sweat off | sweat down
soften	soften	heats prep	soften up | soften down
caramelize	caramelize	heats prep	caramelise
bloom	bloom	heats prep
temper	temper	heats prep
toast	toast	heats prep	toast up | toast off
crisp	crisp	heats	crisp up
render	render	heats prep	render out | render down | render off
melt	melt	heats prep	melt down | melt in
heat	heat	heats prep	heat up | heat through
reheat	reheat	heats
warm	warm	heats prep early	warm up | warm through
bring up to temperature	heat	heats	bring up to temp | bring it up to temperature | bring it up to temp | bring it back up to temperature | bring it back up to temp | bring that up to temperature | bring that up to temp | bring that back up to temperature | bring that back up to temp | bring this up to temperature | bring this up to temp | bring this back up to temperature | bring this back up to temp | bring them up to temperature | bring them up to temp | bring them back up to temperature | bring them back up to temp | bring these up to temperature | bring these up to temp | bring these back up to temperature | bring these back up to temp | bring it all up to temperature | bring it all up to temp | bring it all back up to temperature | bring it all back up to temp | bring that all up to temperature | bring that all up to temp | bring that all back up to temperature | bring that all back up to temp	verb:brings,bringing,brought,brought
preheat	preheat	ovens changes early	heat the oven | light the oven | light your oven | light my oven | preheat the oven
pre heat	preheat	ovens changes		verb-last
bake	bake	heats ovens prep	bake off | bake up
blind bake	bake	heats ovens prep	par bake | parbake	verb-last
roast	roast	heats ovens prep	roast off | roast up
broil	broil	heats grills prep
grill	grill	heats grills prep	grill off | griddle | chargrill
char grill	grill	heats grills prep		verb-last
barbecue	grill	heats grills prep	bbq | barbeque
char	char	heats grills prep	char up	verb:chars,charring,charred,charred
torch	torch	heats grills prep	blowtorch
flambe	flambe	heats		verb:flambes,flambeing,flambeed,flambeed
smoke	smoke	heats prep
boil	boil	heats boils prep	boil up | boil off
put the water on	boil	heats boils	put some water on | put the kettle on | get the water on | get the water going | get some water going | get the kettle on	verb:puts,putting,put,put
bring to a boil	boil	heats boils	bring it up | bring that up | bring this up | bring them up | bring it all up | bring that all up | get it to a boil | get that to a boil | get it to the boil | get that to the boil | get to a boil | bring it up to a bubble | bring that up to a bubble | bring up to a bubble | bring to the boil | bring to boil | bring up to a boil | bring up to the boil | bring it to a boil | bring it to the boil | bring this to a boil | bring this to the boil | bring that to a boil | bring that to the boil | bring it up to a boil | bring it up to the boil | bring this up to a boil | bring that up to a boil | bring them to a boil | bring everything to a boil | bring everything to the boil | bring back to a boil | bring back to the boil | bring it back to a boil | bring it back to the boil | bring to a rolling boil | bring it to a rolling boil | bring to a full boil | bring to a gentle boil | bring it to a gentle boil | bring it up to a rolling boil | bring it up to a gentle boil | bring that up to the boil | bring that up to a rolling boil | bring that up to a gentle boil | bring this up to the boil | bring this up to a rolling boil | bring this up to a gentle boil | bring them up to a boil | bring them up to the boil | bring them up to a rolling boil | bring them up to a gentle boil | bring these up to a boil | bring these up to the boil | bring these up to a rolling boil | bring these up to a gentle boil | bring it all up to a boil | bring it all up to the boil | bring it all up to a rolling boil | bring it all up to a gentle boil | bring that all up to a boil | bring that all up to the boil | bring that all up to a rolling boil | bring that all up to a gentle boil	verb:brings,bringing,brought,brought
come to a boil	boil	heats boils	come up to a bubble | come up to the bubble | come to a bubble | come to the boil | come up to a boil | come up to the boil	verb:comes,coming,came,come
up to a boil	boil	heats boils	up to a bubble | up to the boil | back to the boil | back to a boil | back up to the boil | back up to a boil | up to a rolling boil | up to a full boil | up to a gentle boil | up to a good boil | back to a rolling boil | back up to a rolling boil | to a rolling boil | to a full boil | to a gentle boil | to a good boil | to a hard boil | to a fast boil | right up to a boil | right up to the boil | straight up to a boil | straight up to the boil | just up to a boil | just up to the boil | right back up to a boil | right back up to the boil | straight back up to a boil | straight back up to the boil | slowly up to a boil | slowly up to the boil | gently up to a boil | gently up to the boil | just to a boil | just to the boil | straight back to a boil | straight back to the boil	none
simmer	simmer	heats boils prep	bubble down | tick away | simmer down | simmer away | bubble | bubble away | putter | tick over
blip	simmer	heats boils	blip away	verb2
bring to a simmer	simmer	heats boils	take it down to a simmer | take that down to a simmer | turn it down to a simmer | turn that down to a simmer | drop it to a simmer | drop it down to a simmer | bring up to a simmer | bring it to a simmer | bring this to a simmer | bring that to a simmer | bring it up to a simmer | bring this up to a simmer | bring that up to a simmer | bring them to a simmer | bring everything to a simmer | bring to a gentle simmer | bring it to a gentle simmer | bring back to a simmer | bring it back to a simmer | bring down to a simmer | bring it down to a simmer | bring to a bare simmer | bring it up to a gentle simmer | bring that up to a gentle simmer | bring this up to a gentle simmer | bring them up to a simmer | bring them up to a gentle simmer | bring these up to a simmer | bring these up to a gentle simmer | bring it all up to a simmer | bring it all up to a gentle simmer | bring that all up to a simmer | bring that all up to a gentle simmer	verb:brings,bringing,brought,brought
up to temperature	heat	heats	up to temp | back to temperature | back up to temperature | right up to temperature | straight up to temperature | just up to temperature | slowly up to temperature	none
up to a simmer	simmer	heats boils	back to a simmer | back up to a simmer | up to a gentle simmer | back to a gentle simmer | back up to a gentle simmer | back down to a simmer | up to a bare simmer | to a gentle simmer | to a bare simmer | to a low simmer | to a slow simmer | up to simmering | back to simmering | right up to a simmer | right up to a gentle simmer | straight up to a simmer | straight up to a gentle simmer | just up to a simmer | just up to a gentle simmer | slowly up to a simmer | slowly up to a gentle simmer | gently up to a simmer | gently up to a gentle simmer | just to a simmer | right down to a simmer | right down to a gentle simmer	none
come to a simmer	simmer	heats boils	come up to a simmer	verb:comes,coming,came,come
poach	poach	heats boils prep
blanch	blanch	heats boils prep	parboil | par boil	verb
scald	scald	heats boils prep		verb
steam	steam	heats boils prep	steam off
braise	braise	heats boils prep
stew	stew	heats boils prep	stew down
slow cook	slow-cook	heats boils prep		verb-last
pressure cook	pressure-cook	heats boils prep		verb-last
sous vide	sous-vide	heats boils prep		none
microwave	microwave	heats prep	nuke
cook down	cook down	heats	cook it down | cook that down | cook them down
reduce	reduce	heats boils prep	reduce down | boil down
thicken	thicken	heats boils prep	thicken up | tighten up
deglaze	deglaze	puts heats
de glaze	deglaze	puts heats		verb-last
wilt	wilt	heats prep	wilt down | wilt in
confit	confit	heats prep		none
coddle	coddle	heats boils prep
infuse	infuse	heats waits prep
steep	steep	waits prep	brew
pop in the oven	bake	heats ovens		verb2
put in the oven	bake	heats ovens	put it in the oven | put them in the oven | put that in the oven | put this in the oven	verb:puts,putting,put,put
go in the oven	bake	heats ovens	go into the oven	verb:goes,going,went,gone
finish	finish	finishes	finish off | finish up
finish cooking	cook	heats		verb
burn off	reduce	heats	boil away
dry roast	toast	heats prep		verb-last
dehydrate	dry	heats prep
cure	cure	waits prep
par fry	fry	heats fries prep		verb-last

# --- the cooker ---------------------------------------------------------------------------------------------
@marks changes
turn up	increase		turn that up to | turn it up to | turn this up to | turn them up to | turn up to | turn the heat up to | bring the heat up to | put it up to | take it up to | turn the flame up to | turn the gas up to | whack the heat up | put the heat up | get the heat up | pump up the heat | turn the heat up | turn up the heat | turn it up | turn the oven up
turn down	lower		knock it down to low | knock it down to medium | knock it down to a | take it down to low | bring it down to low | drop it to low | drop it down to low | turn it down low | turn the heat down | turn down the heat | turn it down | turn that down | turn the oven down | turn it right down | turn the heat right down
turn to low	lower		turn it to low | turn it down to low | turn the heat to low | turn the heat down to low
lower	lower		lower the heat | lower the flame | lower the gas
down low	lower		down to low | right down low | down as low as it goes | down as low as it'll go | down as low as it will go	none
make the flame low	lower		make the heat low | make the gas low | make the fire low | make it low | put the flame low | put the heat low | put the gas low | put the fire low | put the fire lower | put the heat lower | keep the flame low | reduce the flame | reduce the gas	none
make the flame high	increase		make the heat high | make the gas high | make the fire high | put the flame high | put the gas high | increase the flame | increase the gas	none
off the gas	turn off		gas off | close the gas | switch off the gas | switch the gas off | switch off the flame | turn off the gas | turn the gas off | turn off the flame	none
reduce the heat	lower		reduce heat | reduce the temperature
drop the heat	lower		drop the temperature | drop the temp	verb2
knock the heat down	lower		knock the heat back | back off the heat | crank down | dial down
bring the heat down	lower		bring down the heat | bring the temperature down	verb:brings,bringing,brought,brought
increase	increase		increase the heat | raise | raise the heat | crank up | crank it up | crank | crank up the heat | crank the heat up | bump up | bump up the heat | jack up the heat | whack up the heat | kick up the heat
turn on	turn on		turn the heat on | turn the oven on | turn on the heat | turn on the oven | switch on | flick on | fire up
turn off	turn off		fire off | burner off | burners off | heat off | flame off | switch it off | switch that off | turn the heat off | turn off the heat | turn it off | turn that off | turn the oven off | turn off the oven | switch off | kill the heat | switch the heat off
cut the heat	turn off			verb:cuts,cutting,cut,cut
take off the heat	remove	takes changes	take it off the heat | take that off the heat | take this off the heat | take them off the heat | take the pan off the heat | take the pot off the heat | take off heat	verb:takes,taking,took,taken
remove from the heat	remove	takes changes	remove from heat | pull off the heat | pull it off the heat
adjust	adjust

# --- waiting, cold ----------------------------------------------------------------------------------------------
@marks waits
rest	rest
let rest	rest		let it rest | let that rest | let this rest | let them rest | let the dough rest | let the meat rest	verb:lets,letting,let,let
leave to rest	rest		leave it to rest | leave that to rest | leave them to rest | leave to sit | leave it to sit	verb:leaves,leaving,left,left
allow to rest	rest		allow it to rest | allow to stand | allow to sit | allow it to sit | allow it to stand
sit	sit	waits idle	sit there	verb:sits,sitting,sat,sat
let sit	sit		let it sit | let that sit | let this sit | let them sit | let it hang out | let that hang out | let it do its thing | let that do its thing | let them do their thing | let it do its magic | let it do its work | let it stand | let that stand | let stand | let this stand | let it be	verb:lets,letting,let,let
leave	leave	waits idle	leave to stand | walk away | leave it alone | leave them alone | leave that alone | leave those alone | leave this alone | leave these alone | leave them be | leave that be | leave those be | leave be | leave alone | leave it be	verb:leaves,leaving,left,left
stand	stand	waits idle		verb:stands,standing,stood,stood
soak	soak	waits prep early	soak off | presoak
sleep in water	soak	waits prep early	sleep in cold water	verb:sleeps,sleeping,slept,slept
sit in water	soak	waits prep early	sit in cold water	verb:sits,sitting,sat,sat
pre soak	soak	waits prep		verb-last
hydrate	soak	waits prep	rehydrate | plump | plump up
let soak	soak		let it soak | let them soak | let that soak	verb:lets,letting,let,let
marinate	marinate	waits prep early	marinade
let marinate	marinate		let it marinate | let that marinate | let them marinate | let this marinate	verb:lets,letting,let,let
brine	brine	waits prep
pickle	pickle	waits prep
quick pickle	pickle	waits prep		verb-last
ferment	ferment	waits prep
macerate	macerate	waits prep
rise	rise			verb:rises,rising,rose,risen
let rise	rise		let it rise | let that rise | let the dough rise | let them rise | let it prove | let it proof | let that prove | let that proof | let prove | let proof	verb:lets,letting,let,let
leave to rise	rise		leave it to rise | leave to prove | leave to proof | leave it to prove | leave it to proof	verb:leaves,leaving,left,left
prove	prove	waits prep
proof	proof	waits prep
double in size	rise		double up
cool	cool	waits prep	cool down | cool off | cool completely
let cool	cool		let it cool | let that cool | let them cool | let it cool down | let that cool down | let this cool | let them cool down | let this cool down | let it cool off	verb:lets,letting,let,let
leave to cool	cool		leave it to cool | leave them to cool | leave that to cool	verb:leaves,leaving,left,left
set up	set			verb:sets,setting,set,set
firm up	set		congeal
gel	set		jell	verb:gels,gelling,gelled,gelled
let set	set		let it set | let that set | let them set	verb:lets,letting,let,let
chill	chill	waits cold prep	chill down
refrigerate	refrigerate	waits cold
pop in the fridge	chill	waits cold	pop it in the fridge | pop them in the fridge | pop that in the fridge	verb2
put in the fridge	chill	waits cold	put it in the fridge | put them in the fridge | put that in the fridge | put this in the fridge	verb:puts,putting,put,put
stick in the fridge	chill	waits cold	stick it in the fridge | stick that in the fridge | stick them in the fridge	verb:sticks,sticking,stuck,stuck
go in the fridge	chill	waits cold	go into the fridge	verb:goes,going,went,gone
freeze	freeze	waits cold prep		verb:freezes,freezing,froze,frozen
thaw	thaw	waits prep	defrost
hang	hang			verb:hangs,hanging,hung,hung
age	age	waits prep		verb:ages,aging,aged,aged
dry out	dry	waits
mature	mature	waits prep	ripen
develop	rest		mellow
hold	hold	waits idle		verb:holds,holding,held,held
keep warm	keep warm	waits	keep hot | keep it warm | keep them warm | keep that warm	verb:keeps,keeping,kept,kept
wait	wait	light
relax	rest
settle	rest	waits idle	settle down
stay	leave	waits idle
store	store	hidden	store away

# --- taking out, cleaning -----------------------------------------------------------------------------------
@marks takes
remove	remove		extract | fish out | pull off | yank out | pull from the oven
take out	remove		take off | take away | take from | take up | take it out | take that out | take them out | take it out of the oven | take out of the oven | take them out of the oven | take that out of the oven	verb:takes,taking,took,taken
pull out of the oven	remove		pull it out of the oven | pull them out of the oven | pull it out | pull them out | pull it off
come out of the oven	remove		come out | come off	verb:comes,coming,came,come
get out	remove		get it out | get them out	verb:gets,getting,got,gotten
lift	lift		lift out | lift off | lift up
drain	drain	takes prep	drain off | drain away | pour off | pour away
drip	drain	takes	drip off | drip dry	verb2
strain	strain	takes prep	strain out | strain off
put it through a sieve	sieve		put that through a sieve | put them through a sieve | put through a sieve	verb:puts,putting,put,put
pass it through a sieve	sieve		push it through a sieve | pass through a sieve | push through a sieve | pass that through a sieve | push that through a sieve
sift	sift	mixes puts prep	sift in | sift together | sift over
sieve	sieve	mixes prep	sieve in | sieve together | sieve over
skim	skim		skim off	verb2
scrape	scrape		scrape up | scrape off | scrape out
scrape down	scrape
discard	discard		toss out | compost | ditch | pour out
throw away	discard		throw out	verb:throws,throwing,threw,thrown
get rid of	discard			verb:gets,getting,got,gotten
bin	discard			verb2
reserve	reserve	takes prep
keep back	reserve		keep aside | keep to one side	verb:keeps,keeping,kept,kept
hold back	reserve			verb:holds,holding,held,held
save	reserve		save back | save for later
rinse	rinse	takes prep early	rinse off | rinse out
run under the tap	rinse	takes	run it under the tap | run them under the tap | run it under cold water | run them under cold water | run that under the tap | run that under cold water | run under cold water	verb:runs,running,ran,run
give it a rinse	rinse	takes prep	give them a rinse | give that a rinse | give it a good rinse | give them a good rinse | give it a wash | give them a wash | give those a rinse | give that a good rinse | give those a good rinse | give it a quick rinse | give them a quick rinse | give that a quick rinse | give that a wash | give those a wash | give it a good wash | give them a good wash | give that a good wash | give it a quick wash | give them a quick wash | give it a little rinse | give it a little wash | give it a nice rinse | give it a nice wash | give it a really good rinse | give it a really good wash | give it a big rinse | give it a big wash | give it a gentle rinse | give it a gentle wash | give it a final rinse | give it a final wash | give that a quick wash | give that a little rinse | give that a little wash | give that a nice rinse | give that a nice wash | give that a really good rinse | give that a really good wash | give that a big rinse | give that a big wash | give that a gentle rinse | give that a gentle wash | give that a final rinse | give that a final wash | give this a rinse | give this a wash | give this a good rinse | give this a good wash | give this a quick rinse | give this a quick wash | give this a little rinse | give this a little wash | give this a nice rinse | give this a nice wash | give this a really good rinse | give this a really good wash | give this a big rinse | give this a big wash | give this a gentle rinse | give this a gentle wash | give this a final rinse | give this a final wash | give them a little rinse | give them a little wash | give them a nice rinse | give them a nice wash | give them a really good rinse | give them a really good wash | give them a big rinse | give them a big wash | give them a gentle rinse | give them a gentle wash | give them a final rinse | give them a final wash | give those a good wash | give those a quick rinse | give those a quick wash | give those a little rinse | give those a little wash | give those a nice rinse | give those a nice wash | give those a really good rinse | give those a really good wash | give those a big rinse | give those a big wash | give those a gentle rinse | give those a gentle wash | give those a final rinse | give those a final wash | give these a rinse | give these a wash | give these a good rinse | give these a good wash | give these a quick rinse | give these a quick wash | give these a little rinse | give these a little wash | give these a nice rinse | give these a nice wash | give these a really good rinse | give these a really good wash | give these a big rinse | give these a big wash | give these a gentle rinse | give these a gentle wash | give these a final rinse | give these a final wash | give everything a rinse | give everything a wash | give everything a good rinse | give everything a good wash | give everything a quick rinse | give everything a quick wash | give everything a little rinse | give everything a little wash | give everything a nice rinse | give everything a nice wash | give everything a really good rinse | give everything a really good wash | give everything a big rinse | give everything a big wash | give everything a gentle rinse | give everything a gentle wash | give everything a final rinse | give everything a final wash	verb:gives,giving,gave,given
wash	wash	takes prep early	wash off
scrub	scrub	takes prep		verb2
clean	clean	takes prep	clean off
wipe	wipe		wipe off | wipe down | wipe out | wipe away
dry	dry	takes prep	dry off | towel off
pat dry	pat dry	takes prep		verb2
pat dry with	pat dry	takes	pat them dry | pat it dry | pat that dry | pat this dry	verb2
blot	pat dry	takes	blot dry	verb2
dab dry	pat dry	takes	dab	verb2
wring	squeeze	prep	wring out	verb:wrings,wringing,wrung,wrung
squeeze out	squeeze	takes prep	squeeze the water out | squeeze all the water out | squeeze out the water | squeeze out all the water | squeeze the water out of it | squeeze the water out of them | squeeze the liquid out | squeeze out the liquid | squeeze the moisture out | squeeze out the moisture | squeeze dry | press dry | squeeze it dry | squeeze them dry | squeeze that dry | squeeze it out | squeeze them out | squeeze that out
spin dry	dry		spin	verb:spins,spinning,spun,spun
uncover	uncover
unfold	unroll		unroll
take the lid off	uncover		take off the lid	verb:takes,taking,took,taken
unwrap	unwrap			verb2
open	open	idle	open up
release	release
run a knife around	release		run a knife round | run a knife around the edge | run a knife round the edge | run a knife around the edges | run your knife around | run a knife around the outside	verb:runs,running,ran,run
vent	release
@marks
scoop out	scoop
push	push
flip	flip	brief turns	flip over | flip around	verb2
turn	turn	brief turns	turn around | rotate
turn over	turn	brief turns	turn it over | turn them over | turn that over | turn them round | turn upside down
cover	cover	brief	cover up | cover with | cover over
put the lid on	cover	brief	put a lid on | put the lid back on | put a lid on it	verb:puts,putting,put,put
pop the lid on	cover	brief	pop a lid on | clap a lid on | clap the lid on	verb2
close the lid	cover	brief	shut the lid
tent	cover		cover loosely
weigh down	press		weight down
sterilize	sterilize	boils	sterilise
label it	label		label them | label the jars | label the jar | label your jars
bottle it	bottle		bottle it up | bottle them | bottle that | bottle up
drag through	drag		drag it through | drag them through | drag in
wet your hands	wet		wet my hands | wet your fingers | wet the edge | wet the edges | wet the rim | wet the border | wet the sheets | wet the rice paper | wet the cloth | wet the paper
mop it	mop		mop it with | mop them | mop them with

# --- seasoning, judging -----------------------------------------------------------------------------------------
@marks seasons
season	season	seasons prep	season up | season with | season again
season to taste	season
grease	grease	seasons prep early	grease up
adjust the seasoning	season		adjust seasoning | correct the seasoning | check the seasoning | check for seasoning | taste for seasoning
@marks
taste	taste	tastes	have a taste | have a little taste | taste again
check	check		check on
test	test		test out
cut one open	check			verb:cuts,cutting,cut,cut
break one open	check			verb:breaks,breaking,broke,broken
stick a skewer in	check		stick a fork in | stick a toothpick in | stick a thermometer in | poke a skewer in | poke one with a skewer | poke it with a skewer | stick a knife in	verb:sticks,sticking,stuck,stuck
put a thermometer in	check		put your thermometer in | put the thermometer in | put a skewer in | put a toothpick in	verb:puts,putting,put,put
skewer in the middle	check		toothpick in the middle | knife in the middle | thermometer in the middle	none
measure	measure		measure out | measure up
weigh	weigh		weigh out
sweeten	sweeten	seasons
spice	season	seasons	spice up | perk up
sharpen	season		brighten | brighten up | balance | balance out
flavor with	flavor	prep	flavour with | flavor it | flavour it | flavor the | flavour the | flavor them | flavour them | perfume | enrich | aromatize
double	double	prep
repeat	repeat
keep an eye on	watch	hidden		verb:keeps,keeping,kept,kept

# --- finishing ---------------------------------------------------------------------------------------------------
@marks finishes puts
sprinkle	sprinkle		sprinkle over | sprinkle on | sprinkle in | sprinkle with | sprinkle around
scatter	scatter		scatter over | scatter on | strew
dust	dust		dust over | dust with | dust on
garnish	garnish	garnishes	garnish with
shower	scatter	finishes puts garnishes	rain in | shower with
finish with	finish	finishes garnishes	end with | finish off with | finish it with | finish it off with | finish them with | finish them off with | finish that with | finish this with | finish these with | finish those with | finish the bowls with | finish the dish with | finish the plates with | finish the plate with | finish the soup with | finish each bowl with | finish each plate with | finish each one with | finish everything with	none
dot	dot		dot with | dot over	verb2
fleck	sprinkle
@marks serves
serve	serve		serve up | serve with | serve over
plate up	plate		dish up | dish out
eat	eat	serves idle		verb:eats,eating,ate,eaten
enjoy	enjoy
tuck into	eat	serves idle	devour | dive in
dig in	eat	serves idle	dig into	verb:digs,digging,dug,dug
@marks
dunk	dip		dunk in | dunk into

# --- readying -----------------------------------------------------------------------------------------------------
prepare	prepare	light
prep	prepare	light	prep up	verb2
prime	prepare	light
attach	attach	light
switch to	use	light
collect	gather	light	gather | gather up | round up
reserve for later	reserve	takes

# --- too weak to be a step ------------------------------------------------------------------------------------------
@marks light
get	get			verb:gets,getting,got,gotten
go	go		go for | go over	verb:goes,going,went,gone
make	make		make up | make sure	verb:makes,making,made,made
have	have			verb:has,having,had,had
keep	keep		keep on | keep going	verb:keeps,keeping,kept,kept
let	let			verb:lets,letting,let,let
take	take			verb:takes,taking,took,taken
use	use		use up
do	do			verb:does,doing,did,done
come	come		come up	verb:comes,coming,came,come
give	give			verb:gives,giving,gave,given
start	start		start off | start with | start out | kick off
begin	start		begin with	verb:begins,beginning,began,begun
continue	continue		carry on | move on
try	try		try out
see	see			verb:sees,seeing,saw,seen
look	look		look for | look at
want	want		could do with | can do with
need	need
bring	bring		bring in | bring out | bring back	verb:brings,bringing,brought,brought
grab	get		grab a hold of	verb2
turn into	become		end up
become	become			verb:becomes,becoming,became,become
help	help
stop	stop			verb2
change	change
call	call
allow	allow
create	make
ensure	ensure
avoid	avoid
find	find			verb:finds,finding,found,found
buy	buy	light hidden	pick up	verb:buys,buying,bought,bought
feel	feel			verb:feels,feeling,felt,felt
smell	smell			verb:smells,smelling,smelled,smelled
hear	hear			verb:hears,hearing,heard,heard
run	run		run through | run around	verb:runs,running,ran,run
hit	hit			verb:hits,hitting,hit,hit
knock	knock
happen	happen
happen to	happen
absorb	absorb		soak up | suck up
stick together	hold			verb:sticks,sticking,stuck,stuck
fall apart	fall apart			verb:falls,falling,fell,fallen
burn	burn		scorch
curdle
overcook			overbake | overmix | overdo | overwork | overbeat | overknead | overstir
over cook	overcook		over bake | over mix | over work | over beat | over knead | over stir | over do	verb-last

# --- talk -----------------------------------------------------------------------------------------------------------
@marks hidden
watch	watch		watch out
subscribe	subscribe
click	click
follow	follow
share	share
comment	comment
know	know			verb:knows,knowing,knew,known
think	think			verb:thinks,thinking,thought,thought
love	love
tell	tell			verb:tells,telling,told,told
talk	talk		talk about
show	show			verb:shows,showing,showed,shown
remember	remember
forget	forget			verb:forgets,forgetting,forgot,forgotten
explain	explain
wonder	wonder
learn	learn

# --- participles with no verb of their own ----------------------------------------------------------------------------
@tag DONE
@forms none
@marks puts finishes prep
topped off	top		topped up | topped with
@marks prep
confit
strung
snapped
slivered
scraped
knotted
podded
riced
crumbed
pulped
chunked
tailed
sprouted
wedged
frenched

# --- second readings: words that are verbs first, and things second ---
@tag OTHER
@forms none
@marks
skin
@tag OVEN
@forms noun
@marks grills
grill

@tag TOOL
@forms noun
@marks
whisk
brush
skewer

@tag PLACE
@forms noun
@marks
top	surface
tap			faucet

@tag HEAT
@forms none
@marks
heat

@tag STATE
@forms none
@marks
warm		prep
boiling		prep
simmering		prep
cool
dry	dried
brown
clean

@tag PART
@forms noun
@marks
mix	mixture
glaze
rub
crumble
drizzle
garnish
layer
dip
mash
tempering

@tag DISH
@forms noun
@marks
stew
poke	rice bowl
stir fry	stir-fry
wrap
toast
roast
bake
braise
scramble
roll
dip
punch	cocktail
mash	mashed potato	early
confit
skewers

@tag OTHER
@forms noun
@marks
color			colour
smell
smoke
break
grind
spring back				verb:springs back,springing back,sprang back,sprung back
bounce back				verb:bounces back,bouncing back,bounced back,bounced back

@tag EATER
@forms noun
@marks
serving			portion | helping
plate	serving		plateful
bowl			bowlful
glass
ramekin
mug
lunch	serving		dinner | supper | meal

@tag PART
@forms none
@marks

@tag EXTRACT
@forms none
@marks
peel

@tag COUNTER
@forms noun
@marks
whole clove	clove

# "A glass of milk", "two mugs of lentils": of no set size, which repair.rules chooses behind a number.
@tag UNIT
@forms noun
@marks generic
glass	scoop
mug	scoop

# "Three onions, wait, two": takes back what was said, which repair.rules chooses.
@tag SORRY
@forms none
@marks
wait

# "It's asparagus season": a quarter of a year, which repair.rules chooses.
@tag TIME
@forms noun
@marks
season	7889400

@tag FOOD
@forms none
@marks uncounted ground
mince	mince	generic early	lean mince
@forms noun
@marks meat
bone		generic

@tag FOOD
@forms none
@marks aside cooked uncounted
toast
