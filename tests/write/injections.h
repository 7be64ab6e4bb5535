/* tests/write/injections.h: texts that would be markup, code or an address if an escaper missed
 * them.
 * SPDX-License-Identifier: MIT */
#ifndef TESTS_WRITE_INJECTIONS_H
#define TESTS_WRITE_INJECTIONS_H

static const char *const INJECTIONS[] = {
    "<script>alert(1)</script>",
    "</script><script>alert(1)</script>",
    "</title><svg onload=alert(1)>",
    "</style><img src=x onerror=alert(1)>",
    "\" onmouseover=\"alert(1)",
    "' onmouseover='alert(1)",
    "\"><img src=x onerror=alert(1)>",
    "<!--",
    "--><script>alert(1)</script>",
    "<![CDATA[<script>alert(1)</script>]]>",
    "]]><script>alert(1)</script>",
    "&lt;script&gt;alert(1)&lt;/script&gt;",
    "&#60;script&#62;",
    "&quot;&#39;&amp;",
    "javascript:alert(1)",
    "data:text/html,<script>alert(1)</script>",
    "<a href=\"javascript:alert(1)\">x</a>",
    "<iframe src=//evil.example>",
    "<base href=//evil.example>",
    "<meta http-equiv=refresh content=0;url=//evil.example>",
    "<svg><animate onbegin=alert(1)>",
    "<math><mi xlink:href=javascript:alert(1)>",
    "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY y SYSTEM \"file:///etc/passwd\">]>",
    "`${alert(1)}`",
    "\\u003cscript\\u003e",
    "\xC0\xBCscript\xC0\xBE",
    "\xEF\xBC\x9Cscript\xEF\xBC\x9E",
    "\xE2\x80\xA8"
    "alert(1)\xE2\x80\xA9",
    "\xE2\x80\xAE"
    "elttil",
    "a\x01"
    "b\x0C"
    "c\x7F",
    "../../etc/passwd",
    "..\\..\\x",
    "con.txt\n\nNOTE x",
    "1 --> 2",
    "00:00:01.000 --> 00:00:02.000",
    "{{7*7}}",
    "%3Cscript%3E",
    "expression(alert(1))",
    "url(javascript:alert(1))",
    "<",
    ">",
    "\"",
    "'",
    "&",
};

#endif
