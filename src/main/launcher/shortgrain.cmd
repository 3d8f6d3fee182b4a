@echo off
rem Starts Shortgrain. Needs a Java runtime 17 or newer, found through JAVA_HOME or PATH.
setlocal
set "jar=%~dp0@jar@"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx256m -Xshare:auto -Dsun.reflect.inflationThreshold=2147483647 -Djdk.reflect.useNativeAccessorOnly=true %SHORTGRAIN_JAVA_OPTIONS% -jar "%jar%" %*
exit /b %errorlevel%
