# Grammar words and turns of speech: what holds an English sentence together, and the phrases that tell
# instruction from story. SPDX-License-Identifier: MIT

@tag ARTICLE
@forms none
@marks joins
a			an | a wee

@tag THE
@forms none
@marks joins
the
this		strong
that	this
these		plural strong
those	these	plural
my		names joins	your | our | his | her | their | its
any
both

@tag IT
@forms none
@marks
it			ones
them		plural	they | 'em | em
everything			the lot | the whole lot | the whole thing | that lot | all that | the whole business

@tag OF
@forms none
@marks joins
of

@tag AND
@forms none
@marks joins
and			plus | as well as | along with | together with | followed by

@tag OR
@forms none
@marks joins
or			or else

@tag TO
@forms none
@marks joins
to

@tag FOR
@forms none
@marks joins
for

@tag WITH
@forms none
@marks joins
with

@tag AT
@forms none
@marks joins
at

@tag INTO
@forms none
@marks joins
in			into | onto | on to | in to | on | over | across | around the | underneath | under

@tag BY
@forms none
@marks joins
by			x | at a time | at one time
# "Eighty-one years old", "seventy percent chocolate".
@tag COUNTED
@forms none
@marks
years			calorie | calories | kilocalories | kilojoules | kcal | carbs | grams of protein | gram of protein | milligrams of protein | milligram of protein | grams of fibre | gram of fibre | milligrams of fibre | milligram of fibre | grams of fiber | gram of fiber | milligrams of fiber | milligram of fiber | grams of carbs | gram of carbs | milligrams of carbs | milligram of carbs | grams of carbohydrates | gram of carbohydrates | milligrams of carbohydrates | milligram of carbohydrates | grams of carbohydrate | gram of carbohydrate | milligrams of carbohydrate | milligram of carbohydrate | grams of saturated fat | gram of saturated fat | milligrams of saturated fat | milligram of saturated fat | grams of cholesterol | gram of cholesterol | milligrams of cholesterol | milligram of cholesterol | grams of sodium | gram of sodium | milligrams of sodium | milligram of sodium | grams of potassium | gram of potassium | milligrams of potassium | milligram of potassium | grams of iron | gram of iron | milligrams of iron | milligram of iron | grams of calcium | gram of calcium | milligrams of calcium | milligram of calcium | grams of vitamin c | gram of vitamin c | milligrams of vitamin c | milligram of vitamin c | grams of omega three | gram of omega three | milligrams of omega three | milligram of omega three | grams of added sugar | gram of added sugar | milligrams of added sugar | milligram of added sugar | year | years old | year old | percent | per cent | % | dollars | quid | bucks | euros | pence | cents | degrees outside | degrees out | degrees out there | degrees outdoors | degrees in the shade | degrees today | degrees in this kitchen | degrees in this room | degree day | degree heat | degree weather | degree angle | degree angles | degree turn | degrees in the sun | degrees out today | degrees outside today

@tag FROM
@forms none
@marks joins
from			out of | off of | off the

@tag BE
@forms none
@marks
is			are | was | were | be | been | being | 's
@marks tells
reads	is		read | says | say | hits | reaches | should say | should read | registers | shows | climbs to
@marks

@tag THERE
@forms none
@marks
here is		strong	here's | here are | here we have
there is			there's | there are
it is		tells	it's | they're | those are
these are	it is	tells strong
those were		names	these were | they were | this was | so those were
that is		names	that's | that was | that'll be | which is | so that's | so that is | so that was | and that is | and that's
this is	that is	names strong	so this is
there you have		names strong	there you have it | and there you have it

@tag HAVE
@forms none
@marks
have			i have | we have | you have | has | had | got | i've got | we've got | you've got | i got | we got | i've | you'll need | you need | we need | i need | you're going to need | we're going to need | i'm going to need | we'll need | i'll need | you want | you'll want | i want | we want | we use | i use | i used | we used | i've used | we've used | i started with | we started with | i'm using | we're using | i'm going to use | we're going to use | i'll use | it takes | calls for | i've put out | it wants | there goes | it'll want | it'll need | it will need | it will want | it might need | it might want | it may need | it could do with | it could use | i bought | we bought | i've bought | we've bought | i picked up | we picked up | i've picked up | we've picked up | i ordered

@tag WILL
@forms none
@marks joins
will			going to | gonna | i'll | we'll | you'll | i'm going to | we're going to | you're going to | i'm gonna | we're gonna | you're gonna | 'll | want to | wanna | you want to | you wanna | need to | needs to | you need to | have to | has to | you have to | got to | you've got to | gotta | can | you can | we can | should | you should | must | go ahead and | let's | let us | lets | let's go ahead and | i like to | i'd like to | i'm just going to | just going to | we're just going to | just | i'm also going to | then you | and you | you just | and just | and then you | then we | and we | and i | then i | we just | time to | ready to | it's time to | they'll | it'll | that'll | able to | start to | begin to | try to | make sure to | be sure to | make sure you | you're looking to | we're looking to | you're trying to | we're trying to | i'm trying to | try and | you're aiming to | we're aiming to | feel free to | it's ready to | that's ready to | they're ready to | these are ready to | be sure you | you'll want to | you'll need to | you'll have to | you'd want to | you might want to | you may want to | you might need to | you may need to | you might have to | you'll probably want to | you'll probably need to | you'll be wanting to | you'll be needing to | you're going to want to | you're gonna want to | you're going to need to | you're gonna need to | you're going to have to | you're gonna have to | we'll want to | we'll need to | we'll have to | we need to | we want to | we have to | we've got to | i want to | i need to | i have to | i've got to | i'll need to | i'll have to | i'm going to have to | you'd better | you better | you may as well | you might as well | i might as well | we might as well | you ought to | we ought to | ought to | all you have to do is | all you need to do is | all you've got to do is | all i have to do is | all that's left is to | all that's left to do is | what's left is to | the trick is to | trick is to | the key is to | the secret is to | the idea is to | the thing is to | the first thing is to | first thing is to | the next thing is to | next thing is to | the last thing is to | last thing is to | the best way is to | your job is to | the job is to | my advice is to | the easiest way is to | the important thing is to | the main thing is to | the next job is to | next job is to | the next step is to | next step is to | first step is to | the first step is to | last step is to | the last step is to | the only thing left is to | now's the time to | now is the time to | that's your cue to | it's a good idea to | it's best to | it's better to | you're supposed to | you're meant to | don't be afraid to | don't be shy to | take care to | take the time to | remember to | don't forget to | do

@tag ME
@forms none
@marks
i			we | i'm | we're | me | us | i went ahead and | we went ahead and | i already | we already

@tag YOU
@forms none
@marks
you			you're

@tag NOT
@forms none
@marks joins
not			no | never | don't | do not | doesn't | didn't | won't | cannot | can't | without | isn't | no need for | no need to | neither | nor | wouldn't | shouldn't | aren't | haven't | hasn't | mustn't | needn't | there's no | there isn't | there aren't | not any | skip | leave out | leave off | hold the | nobody | nothing | don't you

@tag IF
@forms none
@marks joins
if			unless | whether | suppose | supposing | in case | even if | say you | imagine | pretend | i'd | you'd have to | otherwise | or else you

@tag INSTEAD
@forms none
@marks joins
instead of			in place of | rather than | instead | in the place of | as a substitute for | as opposed to
you can use	use		you could use | you can also use | you could also use | you can always use | you could always use | you might use | you may use | you can just use | you could just use | feel free to use | i've used | you can do it with | you can go with | you could go with | you can go for | or you can use | or you could use | will do | would do | will do too | would do too | will do fine | will do just as well | works too | work too | works as well | work as well | works fine | work fine | works just as well | work just as well | works just fine | work just fine | also works | also work | would work | would work too | will work | will work too | is fine too | are fine too | is fine as well | are fine as well | is fine instead | is also fine | are also fine | is good too | are good too | is just as good | are just as good | is okay too | are okay too | is ok too | are ok too | does the job | do the job | does fine | do fine | does just as well | do just as well | is a good substitute | are a good substitute | is a good swap | i would have | we would have | you would have | they would have | i would've | you would've | i might have put | you might have put | i'd have put | you'd have put
you could			could use | can use | you could also | you can also | could also | can also | you might | swap | swap in | swap it for | swap out | substitute | sub | do the same with

@tag SORRY
@forms none
@marks
sorry			or no | actually make it | actually make that | better make it | let's make it | oh wait | hold on | no actually | actually no | that should be | that should have been | should have been | well more like | no more like | i mean | no wait | wait no | scratch that | make that | or rather | oops | whoops | correction | hang on | what am i saying | no sorry | sorry no | excuse me | no hang on | did i say | let me correct that | i meant | tell a lie | i tell a lie | no i lie | no make that | no no | not that | no that's | no it's | no that is | no they're | no make it | oh no it's | no we need | no i need | no you need | no call it | no we want | no you want | no go for | no you know what | you know what no | you know what | no wait sorry | wait sorry | wait a minute | no hold on | hold on no | did i say that | that's wrong | that's not right | i've said that wrong | i said that wrong | let me start again | let me start over | let me start that again | let me say that again | let me rephrase that | let me rephrase | let me try that again | i'll start again | start again | start over | let me redo that | strike that | wrong one | wrong one sorry | that's the wrong one | i've got that wrong | i got that wrong | i'm telling you wrong | don't listen to me | i'm wrong | i'm wrong there | ignore that | my apologies | forgive me | my fault | silly me | listen to me | what am i talking about | i'm getting confused | i'm all over the place | i got confused | i'm mixing that up | i'm mixing things up | i mixed that up | apologies | slip of the tongue | i misspoke | i beg your pardon | pardon me | beg your pardon | no i'm lying | i'm lying | that's a lie | nope | forget that | forget i said that | never mind that | my mistake | my bad

# Said while thinking, and takes back what stood before where an amount follows.
@marks filler
actually

@tag STORY
@forms none
@marks
my mother		person	my mom | my mum | my mam | my grandmother | my grandma | my gran | my nan | my nana | my granny | my aunt | my auntie | my uncle | my dad | my father | my grandfather | my grandad | my granddad | my sister | my brother | my husband | my wife | my friend | my neighbor | my neighbour | my son | my daughter | my son in law | my cousin | my boss | my kids | my partner | somebody | someone | some people | everybody | some folks | some folk | few folk | a few folk | most folk | most folks | lots of folk | a lot of folks | folk | folks | other people | a lot of people | most people | a fellow | a friend | a friend of mine | the neighbours | the neighbors | he | she | the dog ate | the dog stole | the dog got | the dog had | the dog nicked | the dog licked | the cat ate | the cat stole | the cat got | the cat had | the cat nicked | the cat licked | the puppy ate | the baby ate | the baby threw | the kids ate | the kids stole | the kids got into | the children ate | the boys ate | the girls ate | the birds ate | the mice ate | the slugs ate | the squirrels ate | her husband | the lady | one lady | one man | grandma | grandad | granddad | mother | mum | the old cook | my wife's sister | my wife's mother | my husband's mother | my husband's sister | my sister in law | my mother in law | my brother in law | my sister-in-law | my mother-in-law
mine took		past	mine only took | mine takes | mine usually takes | mine usually took | mine always takes | mine always took | mine needed | mine needs | mine usually needs | mine was done in | mine was done at | mine was done after | mine were done in | mine were done at | mine were done after | mine was ready in | mine was ready at | mine were ready in | mine were ready at | mine was perfect at | mine were perfect at | mine was in for | mine were in for | mine had | took me | it took me | that took me | this took me | they took me
last week		past	sometimes | every now and then | once in a while | now and again | last time | last year | last month | last night | last summer | last winter | years ago | when i was | used to | one time | one year | one day | a while ago | back in the day | back in my day | back in those days | back when | i used to | we used to | you used to | the other day | yesterday | in the old days | years back | in my day | the first time | every year | next week | next time | some day | tomorrow | one night | ages ago | at the restaurant | in the restaurant | at the hotel | in college | at school | at work | i said | he said | she said | i told | it says on | the packet says | the box says | the bag says | the label says | says on the box | says on the packet | says on the bag | the recipe says | the book says | normally | usually | as a child | as a kid | as a student | i lived on | they'd | she'd | he'd | i once | once i | we once | i had | we had | she had | he had | they had | at my sister's | at my sister's place | at my sister's house | at my brother's | at my brother's place | at my brother's house | at my mother's | at my mother's place | at my mother's house | at my mum's | at my mum's place | at my mum's house | at my mom's | at my mom's place | at my mom's house | at my cousin's | at my cousin's place | at my cousin's house | at my friend's | at my friend's place | at my friend's house | at my neighbour's | at my neighbour's place | at my neighbour's house | at my neighbor's | at my neighbor's place | at my neighbor's house | at my aunt's | at my aunt's place | at my aunt's house | at my auntie's | at my auntie's place | at my auntie's house | at my nan's | at my nan's place | at my nan's house | at my gran's | at my gran's place | at my gran's house | at my grandma's | at my grandma's place | at my grandma's house | at my grandmother's | at my grandmother's place | at my grandmother's house | at my dad's | at my dad's place | at my dad's house | at my son's | at my son's place | at my son's house | at my daughter's | at my daughter's place | at my daughter's house | at my uncle's | at my uncle's place | at my uncle's house | at my mate's | at my mate's place | at my mate's house | at my boss's | at my boss's place | at my boss's house | at my parents' | at my parents' place | at my parents' house | at her house | at his house | at their house | at her place | at his place | at their place | people put | people add | people use | people throw in | people will put | some families | other families | some cooks | other cooks | some recipes | other recipes | most recipes | some folk put | some put | some add | others put | others add | i was going to | i was gonna | we were going to | we were gonna | i were going to | i meant to put | i meant to add | i'd meant to | i had meant to | i wanted to put | i tried | i forgot | i remember | remember it was | remember it's | remember that was | remember that's | so remember | just remember | remember i said | i grew up | i learned | i've made this | i had a | get yourself a glass | get yourself a cup | get yourself a mug | get myself a glass | get myself a cup | get myself a mug | get yourselves a glass | get yourselves a cup | get yourselves a mug | pour yourself a glass | pour yourself a cup | pour yourself a mug | pour myself a glass | pour myself a cup | pour myself a mug | pour yourselves a glass | pour yourselves a cup | pour yourselves a mug | make yourself a glass | make yourself a cup | make yourself a mug | make myself a glass | make myself a cup | make myself a mug | make yourselves a glass | make yourselves a cup | make yourselves a mug | have yourself a glass | have yourself a cup | have yourself a mug | have myself a glass | have myself a cup | have myself a mug | have yourselves a glass | have yourselves a cup | have yourselves a mug

@tag CHANNEL
@forms none
@marks
welcome		hidden	welcome back | subscribe | the channel | this channel | my channel | sponsor | sponsored | thank you | thanks for | comments | the comments | in the comments | link below | see you | goodbye | good bye | bye | bye now | hello | hello everyone | hi everybody | hi everyone | hey everybody | like button | notification | write to me | wrote in | write in | wrote to me | send me | cheers | thanks | happy birthday | good morning | good evening | down below | in the description

@tag LIKE
@forms none
@marks joins
looks like			look like | smells like | tastes like | the size of | as big as | as small as | as thick as | as wide as | as thin as | as tall as | as deep as | the width of | the shape of | the thickness of | the color of | the colour of | the consistency of | the texture of | feels like | sounds like | like a | like an | like the | as if | as though | about the size of | sized | size of | thick as | thin as | big as | small as | wide as | tall as | deep as | thicker than | thinner than | bigger than | smaller than

@tag SO
@forms none
@marks starts
so			now | okay | ok | right | alright | all right | well | and now | so now | okay so | ok so | okay now | now then | right then | anyway | here we go | there we go | there you go | meantime | that's when | and that's when | so that's when
then	so	again	and then | after that | finally | so then | once again | afterwards | then of course | and finally | once that's done | once that is done | at this point | but | by now
next	so		first | first of all | first thing | last of all | lastly | last thing | and next | from here | to start | to begin | to begin with

@tag UNTIL
@forms none
@marks joins
until			till | til | just until | just till | up until | so that | long enough for

# "So that goes in for an hour": the second reading, which repair.rules chooses.
@tag SO
@forms none
@marks
so that

@tag WHEN
@forms none
@marks joins
when			once | as soon as | by the time | after

@tag MEANWHILE
@forms none
@marks
meanwhile			in the meantime | at the same time | while that's | while that is | while it's | while they're | while those are | while this is | while we wait | while the | while that | while it | while you wait | while you're waiting | while they | and while

@tag NAMED
@forms none
@marks
called		names	known as | we call it | i call it | we call this | i call this | they call it | it's called

@tag OPENER
@forms none
@marks
today we're making		names strong	today we are making | today i'm making | today i am making | today we're cooking | today i'm cooking | today we're going to make | today i'm going to make | today we're doing | today i'm doing | today let's make | today we'll make | today i'll make | tonight we're making | tonight we are making | tonight i'm making | tonight i am making | tonight we're cooking | tonight i'm cooking | tonight we're going to make | tonight i'm going to make | tonight we're doing | tonight i'm doing | tonight let's make | tonight we'll make | tonight i'll make | this time we're making | this time we are making | this time i'm making | this time i am making | this time we're cooking | this time i'm cooking | this time we're going to make | this time i'm going to make | this time we're doing | this time i'm doing | this time let's make | this time we'll make | this time i'll make | this evening we're making | this evening we are making | this evening i'm making | this evening i am making | this evening we're cooking | this evening i'm cooking | this evening we're going to make | this evening i'm going to make | this evening we're doing | this evening i'm doing | this evening let's make | this evening we'll make | this evening i'll make | this morning we're making | this morning we are making | this morning i'm making | this morning i am making | this morning we're cooking | this morning i'm cooking | this morning we're going to make | this morning i'm going to make | this morning we're doing | this morning i'm doing | this morning let's make | this morning we'll make | this morning i'll make | today's recipe is | tonight's dinner is | on the menu is | on the menu today is | tonight it's | today it's | tonight it is | today it is | this week it's | this evening it's | for tonight it's | for dinner it's | for lunch it's | for breakfast it's | for tea it's | for supper it's | tonight's supper is | tonight's tea is | today's dish is | today's dinner is | today's lunch is | tonight we're having | today we're having | tonight we have | what we're having is
we're making		names	we are making | i'm making | i am making | we're going to make | we're gonna make | i'm going to make | i'm gonna make | let's make | let us make | go and make | let's go and make | go make | get on with the | make a start on | start on the | start the | so then the | and then the | okay the | right the | now the | do one more | one more dish | we'll make | i'll make | going to make | going to be making | we're doing | i'm doing | let's do | i'm going to show you | show you how to make | i want to make | i thought i'd make | i thought we'd make | i thought i'd do | i thought we'd do | i thought we'd have | i said i'd do | i said i'd make | we said we'd do | we said we'd make | we're cooking | i'm cooking | let's cook | we're going to do | i'm going to do | we're starting with | we'll start with | moving on to | now for the | now for my | now on to | next up | up next | first up | up first | we're going to start with | i'll start with | we'll begin with | let's get on with the | for dessert | for pudding | for afters | the main is | for the main course | the starter is | and for dessert | to finish off | moving on | time for the | it's time for the | time for a | time to make the | and now the | so now the | on to the | onto the | let me make | let me do the | we gonna make | i'm gonna do | we're gonna do | we're gonna start with | i'm gonna start with | let's start with | let's begin with | starting with the | turning to the | next comes the | then comes the | after that comes the | finally the | lastly the | and lastly the | and finally the | then for the | so for the | and then for the | let's move on to | move on to | moving onto | we move on to | here's how i make | here's how i do | here's how we make | this is how i make | this is what i make | this is what we make | this is what i'm making | this is what we're making | this is how i do | let's get going on the | get going on the | get started on the | get to work on the | get cracking on the | crack on with the | get on with my | i've got to make | we've got to make | what about the | as for the | i want to do | we want to make | i'd like to make | then i'm making | then we're making | i'm going to show you how to make | i'm going to show you how i make | i'm going to show you guys how to make | i'm going to show you guys how i make | i'm going to show y'all how to make | i'm going to show y'all how i make | i'm going to teach you how to make | i'm going to be making | i'm going to be cooking | i'm going to be showing you how to make | i'm going to be showing you how i make | i'm going to cook up | i'm going to be cooking up | i'm going to share with you my | i'm going to share with you guys my | i'm going to share my | i'm gonna show you how to make | i'm gonna show you how i make | i'm gonna show you guys how to make | i'm gonna show you guys how i make | i'm gonna show y'all how to make | i'm gonna show y'all how i make | i'm gonna teach you how to make | i'm gonna be making | i'm gonna be cooking | i'm gonna be showing you how to make | i'm gonna be showing you how i make | i'm gonna cook up | i'm gonna be cooking up | i'm gonna share with you my | i'm gonna share with you guys my | i'm gonna share my | i am going to show you how to make | i am going to show you how i make | i am going to show you guys how to make | i am going to show you guys how i make | i am going to show y'all how to make | i am going to show y'all how i make | i am going to teach you how to make | i am going to be making | i am going to be cooking | i am going to be showing you how to make | i am going to be showing you how i make | i am going to cook up | i am going to be cooking up | i am going to share with you my | i am going to share with you guys my | i am going to share my | we're going to show you how to make | we're going to show you how i make | we're going to show you guys how to make | we're going to show you guys how i make | we're going to show y'all how to make | we're going to show y'all how i make | we're going to teach you how to make | we're going to be making | we're going to be cooking | we're going to be showing you how to make | we're going to be showing you how i make | we're going to cook up | we're going to be cooking up | we're going to share with you my | we're going to share with you guys my | we're going to share my | we're gonna show you how to make | we're gonna show you how i make | we're gonna show you guys how to make | we're gonna show you guys how i make | we're gonna show y'all how to make | we're gonna show y'all how i make | we're gonna teach you how to make | we're gonna be making | we're gonna be cooking | we're gonna be showing you how to make | we're gonna be showing you how i make | we're gonna cook up | we're gonna be cooking up | we're gonna share with you my | we're gonna share with you guys my | we're gonna share my | we are going to show you how to make | we are going to show you how i make | we are going to show you guys how to make | we are going to show you guys how i make | we are going to show y'all how to make | we are going to show y'all how i make | we are going to teach you how to make | we are going to be making | we are going to be cooking | we are going to be showing you how to make | we are going to be showing you how i make | we are going to cook up | we are going to be cooking up | we are going to share with you my | we are going to share with you guys my | we are going to share my | i'll show you how to make | i'll show you how i make | i'll show you guys how to make | i'll show you guys how i make | i'll show y'all how to make | i'll show y'all how i make | i'll teach you how to make | i'll be making | i'll be cooking | i'll be showing you how to make | i'll be showing you how i make | i'll cook up | i'll be cooking up | i'll share with you my | i'll share with you guys my | i'll share my | we'll show you how to make | we'll show you how i make | we'll show you guys how to make | we'll show you guys how i make | we'll show y'all how to make | we'll show y'all how i make | we'll teach you how to make | we'll be making | we'll be cooking | we'll be showing you how to make | we'll be showing you how i make | we'll cook up | we'll be cooking up | we'll share with you my | we'll share with you guys my | we'll share my | let me show you how to make | let me show you how i make | let me show you guys how to make | let me show you guys how i make | let me show y'all how to make | let me show y'all how i make | let me teach you how to make | let me be making | let me be cooking | let me be showing you how to make | let me be showing you how i make | let me cook up | let me be cooking up | let me share with you my | let me share with you guys my | let me share my | i want to show you how to make | i want to show you how i make | i want to show you guys how to make | i want to show you guys how i make | i want to show y'all how to make | i want to show y'all how i make | i want to teach you how to make | i want to be making | i want to be cooking | i want to be showing you how to make | i want to be showing you how i make | i want to cook up | i want to be cooking up | i want to share with you my | i want to share with you guys my | i want to share my | i wanted to show you how to make | i wanted to show you how i make | i wanted to show you guys how to make | i wanted to show you guys how i make | i wanted to show y'all how to make | i wanted to show y'all how i make | i wanted to teach you how to make | i wanted to be making | i wanted to be cooking | i wanted to be showing you how to make | i wanted to be showing you how i make | i wanted to cook up | i wanted to be cooking up | i wanted to share with you my | i wanted to share with you guys my | i wanted to share my | i'd like to show you how to make | i'd like to show you how i make | i'd like to show you guys how to make | i'd like to show you guys how i make | i'd like to show y'all how to make | i'd like to show y'all how i make | i'd like to teach you how to make | i'd like to be making | i'd like to be cooking | i'd like to be showing you how to make | i'd like to be showing you how i make | i'd like to cook up | i'd like to be cooking up | i'd like to share with you my | i'd like to share with you guys my | i'd like to share my | we are gonna make | i am gonna make | gonna be making | share with you my | share with you guys my | share with y'all my | show you guys how to make | show y'all how to make | show you how i make | teach you how to make | showing you how to make | showing you how i make | learn how to make | this is how we make | this recipe for | my recipe for | our recipe for | a recipe for | tonight's recipe is | tonight's dish is | our recipe today is | the recipe today is | my recipe today is
the first one is		names strong counts	number 1 is | number 2 is | number 3 is | number 4 is | number 5 is | number four is | number five is | the fourth one is | the next dish is | first up is | 1st up is | 1st up | first is | next is | next up is | the second one is | the third one is | the last one is | the next one is | first dish | second dish | the second dish is | the first dish is | the last dish is | number one is | number two is | number three is
the next one		strong counts	this next one | now this next one | next one | the last one | last one | this last one | the next dish | the next recipe | our next | our next recipe | the second one | second one | number two | number three | number four | number five | number 2 | number 3 | number 4 | number 5 | what's next | the second recipe | the third recipe | the next thing | the final one | last but not least | next dish | next recipe | next course | third dish | third recipe | third course | fourth dish | fourth recipe | fourth course | last dish | last recipe | last course | final dish | final recipe | final course | number six | number seven | number eight | number nine | number ten | number 6 | number 7 | number 8 | number 9 | number 10 | third one | fourth one | fifth one | sixth one | final one | the last thing | done next | on to the next | onto the next | on to the next one | onto the next one | who's next | right what's next | number one | number eleven | number twelve | number 1 | number 11 | number 12
another one	the next one	strong	the other one | one left | what's for tea | what's for dinner | what's for supper | my turn | your turn | her turn | his turn | over to you | over to me | one more thing to make | what comes next | it's the one | this is the one | this one's the | on we go | we'll finish with | and to finish | let's make a start | let's get started | let's start | here's another | something sweet | the quick one | a quick one | the easy one | the big one | now there's | first thing | next pot | next pan | next tray | next tin | next bowl | third pot | third pan | third tray | third tin | third bowl | fourth pot | fourth pan | fourth tray | fourth tin | fourth bowl | last pot | last pan | last tray | last tin | last bowl | final pot | final pan | final tray | final tin | final bowl | for this one | with this one | next thing | and last thing | now this one | now this fella | this one here | the other thing | now onto the | one down | two down | three down | that's one done | that's two done | what else have we got | what's left | and last of all | okay what's next | that leaves the | which leaves the | that just leaves the | that only leaves the | next job | next job is | last job | second thing | second job | third thing | one last thing to make | another quick one | this next thing | the following one

@tag RETURN
@forms none
@marks
back to		strong	now back to | and back to | back with | go back to | let's go back to | let's check on | let's check | check on | let's have a look at | let's see how | let's see what's going on with | go and see | let's look at | they've had their | it's had its | that's had its | where were we | where was I | where was we | where did I get to | where had I got to | where'd I get to | where did we get to | has come down | is ready now | has risen | has doubled | let me look at | let me check | let me check on | let me see | let's see the | let's have a look | have a look at | look at those | look at these | that's my timer | there's my timer | that's the timer | there's the timer | the timer's gone | there goes the timer | have had their | has had its | going back to | coming back to | i'll go back to | we'll go back to | how are we doing | how's the | how's my | how are the | how are those | how are my | where was i | let me get back to | let me go back to | getting back to | let's get back to | get back to | back at the | returning to | let's return to | how is the | how is my | how are your | let's take a look at | take a look at | take a peek at | let's peek at | let's have a peek at | let's see where | should be done by now | should be ready by now | ought to be done | ought to be ready | must be done | must be ready by now | now that's had | now they've had | now it's had
that's been			it's been | they've been | they've had | has had | have had | has been | have been

@tag CLOSER
@forms none
@marks
that's it		strong	and that's it | and that is it | that is it | that's all there is to it | that's all it is | that's all | and you're done | all done | and we're done | ready to eat | ready to serve | dinner done | dinner's done | dinner is served | enjoy | dig in | tuck in | bon appetit | there we are | there you are | job done | and it's done | done and dusted | look at that | that's your lot | that's everything | and there you go | there it is | there she is | and there it is | here we are | voila | ta da | and that's that | that's that | that's dinner | that's lunch | that's breakfast | that's supper | that's tea | and that's dinner | and that's lunch | and that's supper | that's ready | that one's done | that one is done | one done | ready to go | and it's ready | and they're ready | we're done | you're done | and that's us | that's us

@tag SERVE
@forms none
@marks
serves			feeds | feed | that'd do | it'd do | this'd do | they'd do | that'd feed | it'd feed | that'd serve | it'd serve | i'd feed | i'd serve | would go round | stretches to | stretch to | 'll stretch to | will stretch to | would stretch to | runs to | 'll run to | will run to | feed for | a feed for | plates up for | plate up for | good for | this'll do | this will do | that will do | it will do | they'll do | should do | it'll stretch to | that'll stretch to | you can stretch it to | family of | a family of | my family of | enough for | plenty for | this does | it does | it'll do | that does | that'll do | will feed | will serve | would feed | would serve | 'd feed | 'd serve | would do | that would do | it would do | this would do | i've fed | we've fed | has fed | 's fed | gets you | gets me | is enough for | 's enough for | to serve | dinner for | supper for | lunch for | breakfast for | that feeds | that serves | it serves | it feeds | this serves | this feeds | does | should serve | should feed | enough to feed | enough to serve | we're cooking for | i'm cooking for | i cook for | this is to feed | which feeds | which serves | to feed | i'm feeding | we're feeding | i am feeding | we are feeding | a party of | party of | a table of | 'll feed | 'll serve | 'll do | goes round | go round | to go round | 'll go round | will go round | that'll go round | it'll go round | going round | goes around | 'll go around | that'll go around | will go around
everything serves	serves	again	everything feeds | everything does | everything here serves | everything here feeds | they all do | they all serve | they all feed | these all do | these all serve | these all feed | all of them serve | all of them feed | all of them do | all of these serve | all of these feed | everything is for | everything's for | everything here is for | everything here's for | they're all for | it's all for | these are all for | all of it is for | all of it's for
makes	makes	counts	so that makes | it made | that made | this made | they made | it gives | that gives | this gives | that'll give you | it'll give you | i make that | i make that about | we make that | you make that | i'd make that | that's given me | it's given me | that's given us | that has given me | came out at | worked out at | that came to | and that makes | and it makes | and this makes | you should end up with | you should end up having | i end up with | i ended up with | we ended up with | going to make | gonna make | i make it | we make it | works out at | work out at | comes out at | comes to | make about | makes about | yields | gives you | gives me | gives us | gave me | gave us | you'll get | you get | you should get | i get | we get | i usually get | i always get | it makes | this makes | that makes | which makes | you'll have | you should have | you end up with | you'll end up with | we end up with | the yield is | should make | 'll make | this'll make | that'll make | it'll make | will make | it should make | that should make | this should make | i filled | we filled | i've filled | we've filled | fills | it fills | that fills | this fills | it filled | that filled | this filled | which fills | will fill | 'll fill | will give you | 'll give you | should give you | comes out to | works out to | it comes to | it came to | made me | that's made | it's made | which has made | that has made | this has made | they've made
cuts into	makes	counts cuts	slices into | cuts in | it cuts in | that cuts in | will cut into | 'll cut into | it'll cut into | it'll cut | that'll cut | 'll cut in | cuts up into | cuts you | that'll cut into | cut into about | should cut into

@tag OPTIONAL
@forms none
@marks
if you like			optionally | if you want | if you like it | if you like them | if you'd like | if you wish | if you fancy | if you fancy it | if you have it | if you have some | if you've got it | if you've got some | if you've got any | if you have any | if you have them | if you've got them | if you've any | if you've some | if you've got one | if you have one | if there's any | if you're into it | if you like that sort of thing | if you like that kind of thing | optional | it's optional | totally optional | completely optional | that's optional | only if you like | only if you like them | up to you | it's up to you | if you're feeling | if you can't stand it | if you can't stand them | if you can't stand that | if you're feeling fancy | leave it off if you don't | or not | if you can get it | if you can find it | if you're feeling brave | if you want the crunch | if you want to | if you dare | if you're feeling brave | if you want one | you can leave it out | you can leave that out | you can leave them out | you can leave those out | you can leave this out | you can skip it | you can skip that | you can skip them | leave it out if you don't | leave it out if you want | not essential | isn't essential | not necessary | isn't necessary | it's not necessary | not a must | only if you want | only if you want to | only if you fancy it | only if you have it | only if you've got it | if you can be bothered | you don't have to | you don't need to | you don't have to use it | you don't have to use them | you don't have to use that | you don't have to add it | you don't have to add them | you don't have to put it in | you don't have to put them in | you don't need it | you don't need them | you don't need that | isn't needed | aren't needed | not needed | it's not needed | not strictly needed | not strictly necessary | aren't essential | it's not essential | aren't necessary | not compulsory | not mandatory | not obligatory | isn't a must | leave it out if you like | leave it out if you'd like | leave them out if you like | leave that out if you like | leave those out if you like | leave them out if you don't | leave those out if you don't | leave that out if you don't | leave this out if you don't | leave it out if you hate it | leave them out if you hate them | feel free to leave it out | feel free to leave them out | feel free to leave that out | feel free to leave those out | feel free to skip it | feel free to skip that | feel free to skip them | feel free to skip those | feel free to omit it | feel free to omit that | you can skip those | you can skip this | you can leave it off | you can leave them off | you can leave that off | you can omit it | you can omit them | you can omit that | you could leave it out | you could leave them out | you could leave that out | you could leave those out | you could skip it | you could skip that | you could skip them | you may leave it out | you may leave them out | skip it if | skip them if | skip that if | skip those if | skip this if | omit it if | omit them if | it's fine without it | it's fine without | it's fine without them | works without it | it works without it | just as good without | just as good without it | if that's your thing | if it's your thing | if you're that way inclined | if you care for it | if you care for them | if you feel like it | if you're in the mood | if you want it | if you want them | if you love it | if you love them | if you're a fan | if you're feeling extravagant | if you're feeling flush | if you're feeling generous | if you've a mind to | if you've got one lying around | if you've got it lying around | if you've some lying around | if you have one lying around | for those who like it | for those who like them | for anyone who likes it | for anyone who wants it | for those who want it | entirely optional | strictly optional | purely optional | very optional | optional extra | as an optional extra | an optional extra | it's an optional extra | if you can be bothered | if you must | if you happen to have some | if you happen to have it | if there is any | if there's some | if you've got any left | if they're about | if they're around | if you eat it | if you eat them | completely up to you | totally up to you | entirely up to you | you don't need it | you don't have to | if you're fancy | if you're that kind of person | if you're that way inclined | if you're so inclined | if the mood takes you | if you feel like it | that's up to you | it's not essential | leave that out if you don't | skip it if you don't | you can skip this | skip it if you want | if that's your thing | if you're using it | if you're using them | if you've got it in | if you have any on hand | if you have it on hand | if you've got some lying around | if you have some lying around | you don't need to | leave that out if you like | leave it out if you like | if you please | if desired | if wanted | your choice | up to you entirely | if you've any in | if you have any lying around | if people want it | if people want them | if people like it | if people like them | if anyone wants it | if anyone wants them | if anybody wants it | if anyone likes it | if anyone likes them | if anybody likes it | if they want it | if they like it | if somebody wants it | if your kids like it | if your people like it | if folks want it | if folks like it | if everyone likes it | if guests want it | if you grow it | if you grow them | if you grow your own | if you keep it | if you keep some | if you've still got some | if you still have some | if it's in season | if they're in season | if you do dairy | if you eat meat | if you come across it | if you come across some | if you come across them | if you happen to have one | if you can get them | if you can get any | if you can find them | if you can find some | if you can find any | if there are any | if there's any going | if there are any going | if there's one | if there's some in the house | if there's any in the house | if there's one in the house | if you've got them in | if you keep them | if you're lucky | if you're keen

@tag BESIDE
@forms none
@marks
served with			on the side | on the side of | alongside | alongside that | alongside it | alongside them | alongside this | on the table with | next to it | beside it | beside them | beside that | goes with | go with it | go with that | go with them | with that | go well with | goes well with | goes really well with | goes very well with | goes so well with | goes great with | goes nicely with | goes lovely with | great over | great on | lovely over | lovely on | nice over | nice on | delicious over | delicious on | perfect over | perfect on | brilliant over | brilliant on | beautiful over | beautiful on | wonderful over | wonderful on | amazing over | amazing on | excellent over | excellent on | gorgeous over | gorgeous on | have it over | have it on | have that over | have that on | have them over | have them on | have this over | have this on | have these over | have these on | eat it over | eat it on | eat that over | eat that on | eat them over | eat them on | eat this over | eat this on | eat these over | eat these on | serve it over | serve it on | serve that over | serve that on | serve them over | serve them on | serve this over | serve this on | serve these over | serve these on | eat mine with | have mine with | take mine with | i like mine with | i like it with | we like it with | i like them with | i like that with | i love it with | we love it with | i love this with | my lot have it with | they have it with | the kids have it with | everyone has it with | we have this with | we eat this with | we eat that with | we eat them with | you can have it with | you can eat it with | you can serve it with | you could serve it with | great alongside | lovely alongside | nice alongside | good alongside | i'd serve it with | i'd serve this with | i'd serve that with | i'd serve them with | i'd serve these with | i'd have it with | i'd have this with | i'd have that with | i'd have them with | i'd eat it with | i'd eat this with | i'd eat that with | you'd have it with | you'd have this with | you'd have that with | you'd serve it with | you'd serve this with | you'd serve that with | you'd eat it with | next to a pile of | next to a heap of | next to a mound of | beside a pile of | beside a heap of | alongside a pile of | alongside a heap of | on a bed of | over a bed of | with a side of | a side of | with some on the side | goes beautifully with | goes perfectly with | goes brilliantly with | goes down well with | go really well with | go great with | go nicely with | works well with | works really well with | works great with | pairs well with | pairs nicely with | pairs with | pair it with | perfect with | perfect alongside | delicious with | gorgeous with | brilliant with | amazing with | fantastic with | wonderful with | excellent with | tasty with | beautiful with | smashing with | best with | really good with | really nice with | very good with | very nice with | so good with | really lovely with | served alongside | served over | served on | served on top of | accompanied by | at the table | to dunk | for dunking | to mop it up | to mop that up | for mopping up | for mopping | to soak it up | to soak it all up | to scoop it up | for scooping | for scooping it up | to eat with it | to eat with that | to eat with them | have it with | have them with | eat it with | eat them with | have that with | good with | beside | great with | lovely with | nice with | to go with it | to go with that | to serve | next to that | round the side | to mop up | to dip | for dipping | underneath it | on the table | we have it with | i have it with | we have them with | i have them with | we have that with | we had it with | eat that with | wouldn't hurt

@tag FINISH
@forms none
@marks
on top			over the top | over it | over everybody | over each | over every one | on every one | on every bowl | on every plate | on every slice | in every bowl | in each bowl | from above | on the top | on the tops | over the tops | over each one | on top of each one | on top of each | to finish | for the top | on the very top | over that | all over | right at the end | at the very end | just before serving | before serving | on each one | on each bowl | on each plate | on each of them | on each glass | on each cup | on each portion | on each serving | on each slice | on each taco | on each toast | on each cookie | on each bun | on each cake | on each muffin | to go on top | to go over the top | to go on the top | to put on top | to scatter on top | to scatter over | to scatter over the top | to sprinkle over | to sprinkle on top | to sprinkle over the top | to throw over the top | to throw on top | over to serve | on top to serve | over before serving | over at the end | on at the end | on top at the end | topped off with | finished with | finished off with | scattered on top | scattered over the top | sprinkled over | sprinkled on top | sprinkled over the top | right before you serve | right before you serve it | right before serving | just before you serve | just before you serve it | just before it goes out | when it's plated | when you plate it | when you plate up | when it's served | as you serve it | when you serve | when you serve it | when you serve them | to top it | to finish it | to finish it off | scattered over
@marks garnishes
to garnish			for garnish | as a garnish | for a garnish | to decorate | for decoration | to serve on top | for the garnish | as the garnish | for my garnish | for garnishing | to garnish with | garnished with
@marks

# Verbs turned around: "in goes the cabbage".
@tag ACTION
@forms none
@marks puts
in goes	add		in go | on goes | on go | in with | on with | in we go with | over goes | down go | down goes | in it goes | in they go | on it goes | in she goes | in he goes | on she goes | then in with | follow that with | follow it with
@marks brief
on goes the lid	cover		on goes its lid | lid goes on | the lid goes on | the lid goes back on | the foil goes on | on with the lid | on with its lid | on goes the foil | on with the foil | back on with the lid | back on goes the lid | then on goes the lid
off comes the lid	uncover		off with the lid | off goes the lid | off comes the foil | off with the foil
over they go	turn		over you go | over it goes | over we go
@marks changes
down goes the heat	lower		down comes the heat | down with the heat | heat goes down
up goes the heat	increase		up with the heat | heat goes up
off goes the heat	turn off		off with the heat
@marks takes
out come	remove		out comes | off it comes | off they come | off with | off comes | out they come | out it comes

# Said while thinking, or with no weight of its own.
@tag OTHER
@forms none
@marks filler
# Asked for a nod, behind what is said: nothing is denied.
aren't you			aren't we | weren't they | weren't we | won't you | won't we | won't they | don't we | doesn't he | doesn't she | didn't we | didn't it | didn't he | didn't she | didn't they | haven't we | haven't they | hasn't it | hasn't he | hasn't she | can't you | can't we | shouldn't it | shouldn't they | wouldn't it | wouldn't you | couldn't you | ain't it | ain't you | innit
um			uh | er | erm | uhm | hmm | mm | ah | oh | you know | i suppose | basically | literally | obviously | of course | you see | as i say | like i said | if you will | honestly | really | simply | quite | very | also | again | please | pretty | rather | mind | mind you | as well | too | even | though | only
@marks asks
what			which | who | whom | whose | how | why | where | does | did
@marks
piece of cake			if that's what you have | if that's all you have | if that's what you've got | if that's all you've got | if that is what you have | if it's what you have | if it's all you have | those bubbles | these bubbles | all those bubbles | the bubbles | air bubbles | little bubbles | tiny bubbles | big bubbles | bubbles on top | half open | half closed | from yesterday | from last night | from the day before | from the other day | start to finish | from start to finish | cup of tea | pinch of salt to that | grain of salt | in a pinch | at a pinch | bread and butter of | in a nutshell | couch potato | full of beans | spill the beans | spilled the beans | cool beans | hill of beans | the big cheese | say cheese | easy as pie | pie in the sky | apple of my eye | apples and oranges | apples to oranges | apples with apples | bad apple | icing on the cake | cherry on the cake | takes the cake | have your cake and eat it | cool as a cucumber | as cool as a cucumber | two peas in a pod | egg on my face | walking on eggshells | cream of the crop | gravy train | sliced bread | worth its salt | worth his salt | worth her salt | worth their salt | salt of the earth | over spilt milk | over spilled milk | like hot cakes | like hotcakes | smart cookie | tough cookie | cookie crumbles | go bananas | went bananas | going bananas | gone nuts | going nuts | drive me nuts | drives me nuts | driving me nuts | in a pickle | in a jam | butter me up | butter him up | butter her up | sugar coat it | bring home the bacon | let's roll | let us roll | we're rolling | camera's rolling | cameras rolling | roll with it | rolls eyes | mince my words | mince words | chew the fat | stew about it | simmer down | on the back burner | let off steam | letting off steam | running out of steam | out of steam | half baked | food for thought
no problem			no worries | not a problem | no rush | no hurry | no big deal | no matter | no need to worry | no doubt | no offense | no offence | not bad | not bad at all | no question | no question about it | no joke | no kidding | not a chance
miles an hour			mile an hour | mile per hour | miles per hour | kilometer an hour | kilometer per hour | kilometers an hour | kilometers per hour | kilometre an hour | kilometre per hour | kilometres an hour | kilometres per hour | dollars an hour | dollars per hour | quid an hour | quid per hour | bucks an hour | bucks per hour
other		counts	others
there			you'd | we'd | it'd | that'd | there'll | there'd | y'all | who'll | what'd | would | could've | would've | might | may | much | many | thing | things | stuff | sort | sorts | kind | kinds | type | types | variety | way | ways | time | times | because | cause | since | although | while | as | than | same | such | each other | every | ever | always | still | yet | already | else | anything | something | everyone | anyone | today | tonight | here | she's | he's | who's | what's | they've | they're | you've | they | hers | mine | yours | ours | theirs | herself | himself | itself | yourself | myself | isn't it | isn't he | isn't she | isn't that | aren't they | wasn't it | doesn't it | don't they | won't it | watt | watts | easily | happily | comfortably | generously | amply
hey			i was going to say | i was gonna say | hi | whoa | woah | wow | oi | ow | ouch | shoo | yikes | yay | ha | haha | ha ha | aw | phew | yum | yummy | gosh | goodness | my goodness | oh dear | oh my | yuck | psst | shush | ssh | ta da | ooh | oooh | ooh la la | hiya | cheerio | ta ra | aiyah | aiyo | och | ach | yeah | yep | yup | nah | huh | whew | jeez | blimey | oy | arre | accha | haan | mate | buddy | sweetie | darling | sweetheart | tea break | coffee break | tea time
easy			no bother
like
# The second reading of a word that begins sentences: "right down"; of one that denies: "nothing on the other side".
right
nothing

# "The frozen kind", "the plain sort": what was named before; repair.rules chooses it.
@tag IT
@forms none
@marks
sort	it		sorts | kind | kinds | type | types | variety | stuff

# Where it goes, with no verb: what is taken off or out, which repair.rules settles.
@tag OTHER
@forms none
@marks
off the heat			off the fire | off the flame | off the stove | off the hob
out onto			out on to | up onto | up on to
through a sieve			through the sieve | through a strainer | through a fine sieve
@tag ACTION
@marks takes
off the heat	remove		off the fire | off the flame | off the stove | off the hob
out onto	remove		out on to | up onto | up on to
through a sieve	sieve		through the sieve | through a strainer | through a fine sieve

# "Onto the platter": the second reading, before the thing.
@tag INTO
@marks joins
onto the	in		on to the
