# Por qué un reconocedor que el dueño configuró no pudo oír una nota de voz.

ear-key = El servicio de transcripción no acepta la clave ({ $why }). El dueño tiene que revisarla. Escríbelo, por favor.
ear-busy = El servicio de transcripción no recibe más notas por ahora ({ $why }). Dilo más tarde, o escríbelo.
ear-refused = Falló el servicio de transcripción ({ $why }). Escríbelo, por favor; el dueño puede revisarlo.
ear-slow = El servicio de transcripción no respondió en { $seconds } segundos. Dilo más tarde, o escríbelo.
ear-unreachable = No hay conexión con el servicio de transcripción ({ $why }). Dilo más tarde, o escríbelo.
ear-answer = El servicio de transcripción no dio una respuesta útil ({ $why }). Escríbelo, por favor; el dueño puede revisarlo.
ear-package-missing = No se puede cargar el paquete sherpa-onnx-node ({ $why }). Ejecuta: npm install sherpa-onnx-node
ear-model-folder = La carpeta { $folder } del modelo de voz no está o no se puede leer ({ $why }). Pon la carpeta como dice el README.
ear-model-files = En { $folder } no hay un modelo de voz que sirva; falta: { $missing }. Baja uno como dice el README.
ear-model-unknown = El modelo de voz en { $folder } no es de ninguna clase conocida aquí. Baja uno de los que nombra el README.
ear-model-broken = No se puede cargar el modelo de voz en { $folder }. Hay que bajarlo otra vez. Mientras tanto, escríbelo.
ear-died = El reconocedor se cayó con esa nota. Escríbelo, por favor.
