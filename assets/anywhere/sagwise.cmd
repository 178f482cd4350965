@echo off
rem Starts Sagwise from this folder on Windows (x64); needs Java 17 or newer.
rem Exit status 3: it could not be started.
setlocal DisableDelayedExpansion
set "home=%~dp0"
set "advice=Install Java 17 or newer (README.txt says from where), or set JAVA_HOME to one."

if not defined JAVA_HOME goto from_path
set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto check
echo sagwise: JAVA_HOME is "%JAVA_HOME%", but there is no bin\java.exe in it. %advice% 1>&2
goto failed

:from_path
set "java="
for %%J in (java.exe) do set "java=%%~$PATH:J"
if defined java goto check
echo sagwise: Java is not installed. %advice% 1>&2
goto failed

:check
for %%J in ("%java%") do set "release=%%~dpJ..\release"
if not exist "%release%" goto start
set "version="
for /f "tokens=2 delims==" %%V in ('findstr /b "JAVA_VERSION=" "%release%"') do set "version=%%~V"
if not defined version goto start
for /f "delims=." %%M in ("%version%") do set "major=%%M"
if %major% GEQ 17 goto start
echo sagwise: "%java%" is Java %version%, which is too old. %advice% 1>&2
goto failed

:start
set "options=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms72m -Xmn16m -Xmx512m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=20"
set "classes=%home%lib\*;%home%lib\win\*"
rem Without anything to do in the console, or with a file dropped on it, the window opens by itself.
if "%~1"=="" goto window
if /i "%~1"=="open" goto window
if exist "%~1" goto window
"%java%" %options% -cp "%classes%" org.sagwise.app.Main %*
exit /b %errorlevel%

:window
for %%J in ("%java%") do set "windowed=%%~dpJjavaw.exe"
if not exist "%windowed%" set "windowed=%java%"
start "Sagwise" "%windowed%" %options% -cp "%classes%" org.sagwise.app.Main %*
exit /b 0

:failed
rem Whoever clicked twice on this file must be able to read why nothing came.
echo %cmdcmdline% | findstr /i /c:" /c " >nul && pause
exit /b 3
