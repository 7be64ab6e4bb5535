# What is measured and counted by, and the words around an amount. The value is the canonical unit; of a time
# it is the seconds. SPDX-License-Identifier: MIT
@tag UNIT
@forms noun
@marks
teaspoon	teaspoon		tsp | teaspoonful | tea spoon | t spoon
tablespoon	tablespoon		tbsp | tbs | tblsp | tbl | tablespoonful | table spoon
dessertspoon	dessertspoon		dsp | dstspn | dessertspoonful | dessert spoon
cup	cup		cupful
fluid ounce	fluid-ounce		fl oz | fluid oz | fl ounce
pint	pint		pt
quart	quart		qt
gallon	gallon		gal
milliliter	milliliter		millilitre | ml | mil | mill | cc
centiliter	centiliter		centilitre | cl
deciliter	deciliter		decilitre | dl
liter	liter		litre | l | ltr
milligram	milligram	weighs	milligramme | mg
gram	gram	weighs	gramme | g | gm | gr
kilogram	kilogram	weighs	kilogramme | kilo | kg
ounce	ounce	weighs	oz
pound	pound	weighs	lb
pinch	pinch
dash	dash
drop	drop
smidgen	pinch	vague	smidge | tad | hint | whisper
handful	handful	vague	fistful
splash	splash	vague
drizzle	drizzle	vague
knob	knob	vague	nub | lump | nugget
# Spoons and glasses of no set size: the cook is asked which.
scoop	scoop		scoopful | spoonful
ladleful	scoop	vague	ladle
mugful	cup	vague approx	glassful | teacupful | teacup | coffee cup
@forms none
# "two spoons": which spoon is not said; singular only behind a number, which repair.rules sees.
spoons	scoop	generic plural

@tag COUNTER
@forms noun
@marks
clove	clove
sprig	sprig		branch
stalk	stalk		rib | stem
head	head
bunch	bunch		bundle
slice	slice		rasher
piece	piece		chunk | square | segment | spear | floret | floweret | link | pod | log | matchstick | ribbon | half moon | baton | crescent | disc | disk | coin | shard | dice sized piece | bite sized piece | bite size piece | bite sized chunk | bite size chunk | lozenge | nugget
stick	stick
leaf	leaf
ear	ear		cob
fillet	fillet		filet
rack	rack
sheet	sheet
strip	strip
wedge	wedge
cube	cube
block	block		slab | brick
ball	ball
bulb	bulb
loaf	loaf	names
bar	bar	names
thumb	thumb		thumb sized piece | thumb size piece | knuckle

@forms none
bits	piece	plural generic
@forms noun

@tag CONTAINER
can	can		tin
jar	jar		half pint jar | pint jar | quart jar | jam jar | one pint jar | one quart jar
packet	packet		package | pack | pouch | sachet | envelope | pkg | sleeve
bottle	bottle		stubby | stubbie | longneck | flagon
bag	bag
box	box
carton	carton		brick pack
tub	tub		punnet | container
tube	bottle
@forms none
half pints	half pint	plural
@forms noun

@tag LENGTH
inch	inch
centimeter	centimeter		centimetre | cm
millimeter	millimeter		millimetre | mm
@forms none

@tag TIME
@forms noun
second	1		sec
minute	60		min
hour	3600		hr
day	86400
week	604800
month	2592000

@tag LONG
@forms none
@marks large
# Overnight is taken as eight to twelve hours (common practice, no source); the value is the lower end.
overnight	28800		over night | all night | through the night | over the night | until tomorrow | till tomorrow | until the next day | till the next day | until the next morning | till the next morning | since last night | since yesterday | since yesterday evening | from last night | from yesterday | from yesterday evening | from the night before | since the night before | one night

@tag DEGREE
@forms noun
@marks
degree	degree
@forms none
°	degree

@tag SCALE
fahrenheit	F		f | °f
celsius	C		centigrade | c | °c
fan	fan		hot air | hot air oven | forced air | circulating air | fan forced | fan oven | convection | fan assisted
# An oven without a fan: its numbers are those of either scale.
fan off	still		with the fan off | no fan | without the fan | without fan | without a fan | not fan | non fan | conventional | conventional oven | no convection

@tag GAS
gas mark	gas		gas | gas number | regulo

@tag SIDE
@forms noun
side	side
batch	batch
@forms none
each lot	batch		each round | every round | per round | each panful | each load | each time | for each time | per lot | every lot
same again on the other side	side	again	the same again on the other side | the same on the other side | same on the other side | same again the other side | the same the other side | same for the other side | the same for the other side | and the other side the same | same thing on the other side | do the other side the same | the other side the same
@forms noun

@tag HEDGE
@marks approx
between	about
i guess	about		let's call it | call it | i reckon | ish
about	about	joins
around	about	joins
roughly	about
approximately	about		approx
maybe	about		perhaps | probably | let's say | lets say | say
nearly	about		almost | just under | just shy of | a little under | a bit under | a little less than | a bit less than | slightly less than | less than
just over	about		a little over | a bit over | slightly over | slightly more than | a little more than | a bit more than | just a little over
something like	about		somewhere around | somewhere between | in the region of | in the neighborhood of | in the neighbourhood of | i would say | i'd say | i'd guess | more or less | just about | right around | anywhere from | anywhere between | kind of | sort of
give or take	about		near enough | or so | or thereabouts | ballpark | circa

@tag FULLNESS
@forms none
@marks
# Every one of these is a plain adjective too: rules want a unit or a number after it.
heaping	heaping		heaped | rounded | overflowing | brimming | piled high | mounded
generous	generous		good | big | healthy | good sized | hefty
scant	scant		barely | small | skimpy | shy | stingy
level	level		flat | leveled | levelled
packed	packed	prep	firmly packed | tightly packed | well packed
lightly packed	lightly packed		loosely packed | loose
full	full

@tag VAGUE
@forms none
@marks vague
a few	a few		a few of | several
a glug	a glug		a glug of | glug of | a good glug of | a big glug of | a nice glug of | a little glug of | a nice big glug of | a couple of glugs of | glugs of
a squirt	a squirt		a big squirt of | a couple of squirts of | a few squirts of
a hunk	a hunk		a hunk of | a wodge of | a curl of | curls of | a scrape of | a scraping of | scrapings of | a crank of | a few cranks of | cranks of | a tot of | a thimble of | a capful of | capful of | capfuls of | a cap of | a jug of | a mouthful of | a forkful of | a finger of | two fingers of | three fingers of | a couple of fingers of | fingers of | a thread of | a slick of | a zigzag of | a bit more of
a dollop	a dollop		a dollop of | dollop of | a big dollop of | a good dollop of | dollops of
a blob	a blob		a blob of | blob of | blobs of | a glob of | globs of | a slather of | a schmear of
a pat	a pat		a pat of | pat of | pats of | a little pat of
a spoonful	a spoonful		a spoon of | spoon of | a good spoon of | a big spoon of | a heaped spoon of | a heaping spoon of | a nice spoon of | a small spoon of | a little spoon of | a spoonful of | spoonful of | spoonfuls of | a big spoonful of | a good spoonful of | a heaped spoonful of
some	some		some of
a little	a little		a little of | just a little | a tiny little
a bit	a bit		a bit of | a little bit | a little bit of | a tiny bit | a tiny bit of | just a bit of | just a little bit of | just a bit | bit of | little bit of | a wee bit of | a small amount of | a small amount | tiny bit of
a touch	a touch		a touch of | just a touch of | a lick of | a suggestion of | touch of
a squeeze	a squeeze		a squeeze of | a good squeeze of | a big squeeze of | squeeze of | a spritz of | a spritz
a sprinkle	a sprinkle		a sprinkle of | a sprinkling of | a few sprinkles of | a couple of sprinkles of | a sprinkling | a good sprinkle of | a light sprinkling of | sprinkle of | sprinkling of | a shower of | a scattering of | a dusting of | a dusting | a light dusting of | a flurry of
a grind	a grind		a grind of | a few grinds of | few grinds of | grinds of | a twist of | a few twists of | few twists of | twists of | a crack of | a few cracks of | few cracks of | cracks of | a good grind of | a few turns of | few turns of | turns of | a good few turns of | a good grinding of | a grinding of
a lot	a lot		a lot of | lots of | lots | plenty of | plenty | loads of | tons of | a ton of | heaps of | a load of | a heap of | a whole heap of | a good lot of | a nice lot of | a whole lot of | oodles of
a good amount	a good amount		a good amount of | a decent amount of | a fair bit of | a good bit of | a fair amount of | a generous amount of | a nice amount of | a good quantity of | a large amount of | a healthy amount of | quite a bit of | quite a lot of | a big amount of
enough	enough		just enough | enough of | as much as you need | as needed | as required | as necessary | whatever amount of
a coating	some		a thin layer of | a layer of | a coating of | a thin coating of | a smear of | a film of | a swirl of | swirl of | a swipe of
a grating	a grating		a grate of | grate of | a good grate of | a grating of | a good grating of | a little grating of | a few gratings of | gratings of | grating of | a few scrapes of | scrapes of | a few scrapes | a couple of scrapes
a swig	some		a squirt of | squirt of | squirts of | a good squirt of | a little squirt of | a dab of | dab of | dabs of | a trickle of | trickle of | a dribble of | dribble of | a shot of | shot of | shots of | a jigger of | jigger of | jiggers of | a nip of | slug of | a good slug of | a big slug of | a swig of | a slug of | a slurp of | a good slurp of | a gulp of | a glimmer of | a lug of | a good lug of | a slosh of | slosh of | big slosh of | a good slosh of | a stack of | a shake of | a good shake of | a couple of shakes of | a few shakes of | few shakes of | shakes of | a few drops of | few drops of | a few dashes of | a few splashes of | a lashing of | lashings of | a good pour of | a mound of | a pile of | a blanket of

@marks again
same amount	same amount		the same amount of | same amount of | the same again of | same again of | the same of | same of | same weight of | same quantity of | an equal amount of | equal amount of | the same weight of | the same quantity of | the same measure of | as much again of

@tag MORE
@marks
another	more	counts	one more
more	more		some more | a bit more | a little more | a little bit more | a touch more | more of | any more
extra	more		an extra | additional | an additional | a further | further

@tag REST
the rest	rest		the rest of | rest of | the rest of the | the remainder | the remainder of | remainder | the remainder of the
remaining	rest		the remaining | what's left | whats left | what is left | what's left of | whats left of | whatever's left | whatever is left | whatever's left of | what remains of | leftover | left over | the last of | the last of the | the last bit of | the last bit of the | the end of the | the tail end of the | whatever remains of
the other half	half		other half | the other half of | the second half | the second half of | other half of

@tag WHOLE
all	all		all of | all the | all of the | all of our | all of your | all of my | all our | all my | all your | all this | all of this | all that | all of that
the whole	all		the whole of | the whole lot | the whole lot of | the whole thing | the entire | entire | every bit of | every last bit of | every drop of | the lot

@tag EACH
each	each		apiece | each of | of each | for each
per	per

@tag TASTE
to taste	to taste		as per taste | as per your taste | as per your liking | to your taste | to your own taste | to your liking | to preference | to your preference | as you like | as much as you like | as much as you can stand | as much as you can take | as much as you can bear | as much as you dare | until it tastes right | till it tastes right | until it's right | till it's right | as you need it | as you think | as you feel | until it tastes right to you | till it tastes right to you | as much or as little as you like | as many as you like | however much you like | however many you like | to your heart's content | with your heart | by taste | according to taste | depending on your taste | depending on taste | as desired | as much as you want | however much you want | as many as you want | to suit | if it needs it | if they need it | if it needs any | if it needs some | if needed | in to taste | however you like it | however you like | the way you like it | how you like it | until it tastes like something | till it tastes like something | until it tastes good | till it tastes good | until it tastes good to you | until it tastes nice | till it tastes nice | till you like it | until you like it | until your tongue | till your tongue | until your mouth | till your mouth | how it tastes to you | how you like them | how you like | the way you like them | the way you like | as you like it | as you like them | as much as you can handle | as much as you can tolerate | as hot as you like | as hot as you like it | as hot as you want | as hot as you want it | as hot as you can handle | as sweet as you like | as sweet as you like it | as salty as you like | as salty as you like it | as you prefer | as you prefer it | until you're happy | till you're happy | until you're happy with it | enough to taste | and taste as you go | taste as you go | tasting as you go | how much you like | how much you want | as your tongue says | as your heart says | as much as your heart says

@tag ATLEAST
at least	at least		a minimum of | minimum of | minimum | a minimum | no less than | not less than | no fewer than | or more | or longer | and up | at the very least | at the least | upwards of | or even longer | or even more

@tag ATMOST
at most	at most		up to | a maximum of | maximum of | maximum | a maximum | max | no more than | not more than | at the most | no longer than | not longer than | tops | or less | or fewer | at the very most | at the outside | at the absolute most

# "One spoon", "half spoon": the second reading of a tool, which repair.rules chooses behind a number.
@tag UNIT
@marks
spoon	scoop	generic
