# Number words. The value is the number. SPDX-License-Identifier: MIT
# Written variants that machine captions make of number words (for, to, ate, won) are left to the search for
# misheard words: they are far more often the words they look like.
# Where nothing is measured it denies: "zero sugar".
@tag NOT
@forms none
@marks joins
zero	not

@tag ONES
@marks
zero	0
one	1
two	2
three	3
four	4
five	5
six	6
seven	7
eight	8
nine	9

@tag TEENS
ten	10
eleven	11
twelve	12
thirteen	13
fourteen	14
fifteen	15
sixteen	16
seventeen	17
eighteen	18
nineteen	19

@tag TENS
twenty	20
thirty	30
forty	40		fourty
fifty	50
sixty	60
seventy	70
eighty	80
ninety	90
# "Two oh five".
oh one	1
oh two	2
oh three	3
oh four	4
oh five	5
oh six	6
oh seven	7
oh eight	8
oh nine	9

@tag HUNDRED
@forms noun
hundred	100

@tag THOUSAND
thousand	1000

@tag FRACTION
half	1/2
third	1/3
quarter	1/4
fourth	1/4
fifth	1/5
sixth	1/6
seventh	1/7
eighth	1/8
ninth	1/9
tenth	1/10
sixteenth	1/16

@tag DOZEN
@forms noun
dozen	12
@forms none
@marks approx
couple	2
pair	2

@tag ORDINAL
@marks
# Listed before units.lex, so that "second" is the ordinal first; "seconds" is only a time.
first	1
second	2
third	3
fourth	4
fifth	5
sixth	6
seventh	7
eighth	8
ninth	9
tenth	10

@tag POINT
point

# "The big one": the second reading, which repair.rules chooses.
@tag IT
one	it
