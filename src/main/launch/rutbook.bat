@echo off
rem Starts Rutbook on a plain JDK 17 or later: JavaFX on the module path, the rest on the class path.
rem The class archive holds only for the folder it was made in; elsewhere the start takes longer.
setlocal
for %%F in ("%~dp0..") do set "here=%%~fF"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
set "place="
if exist "%here%\lib\rutbook.jsa.place" set /p place=<"%here%\lib\rutbook.jsa.place"
set "archive=-Xshare:auto"
if /i "%place%"=="%here%" set "archive=-XX:SharedArchiveFile=%here%\lib\rutbook.jsa"
"%java%" -Drutbook.home="%here%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xlog:cds=off ^
  "%archive%" --module-path "%here%\lib\javafx" --add-modules javafx.controls ^
  -cp "%here%\lib\*" rutbook.app.Main %*
