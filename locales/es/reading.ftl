### Qué no cuadra en lo que alguien escribió: lo entendido, los límites, un ejemplo.
### Masses, temperatures and times come written for the reader already.

reading-mass = ¿Un ave de { $given }? Puedo planear de { $low } a { $high }. Por ejemplo: pavo de { units-example-bird }.
reading-guests = ¿{ $given } a la mesa? Dame un número entero del { $low } al { $high }. Por ejemplo: 11 personas.
reading-setting = { $given } no es temperatura para un ave: trabajo de { $low } a { $high }. Por ejemplo: horno a { $example }.
reading-solution = ¿{ $given } % de solución? La etiqueta dice como mucho { $high } %. Por ejemplo: contiene hasta 8 % de solución.
reading-drive = ¿{ $given } min de viaje? Dime hasta { $high }. Por ejemplo: 40 min de camino.
reading-past = { $given } ya pasó. ¿Cuándo es la cena? Por ejemplo: jueves a { units-example-hour }.
reading-used-by = La fecha del envase, { $day }, ya pasó. Un ave fresca caducada no se come, salvo que se congelara a tiempo.
reading-use-by-far = ¿Caduca { $day }? Tanto no aguanta un ave fresca. Por ejemplo: «caduca el viernes».
reading-far = { $given } queda muy lejos: planeo hasta { $days } días. Por ejemplo: jueves a { units-example-hour }.
reading-fryer = Planeo hornos y ahumadores, no aceite hirviendo. Nunca frías un ave congelada, mojada o rellena, y solo al aire libre. Pregúntame: ¿es seguro freír?
reading-other-bird = Tengo tiempos de pavo, pollo, capón, pato y ganso, de esa ave no, así que no la planeo. Guíate por el termómetro: { $target } en pechuga, muslo y ala.
reading-thermometer = ¿{ $given } en un termómetro? Acepto de { $low } a { $high }. Por ejemplo: pechuga 58, muslo 64.
reading-future = { $given } aún no ha llegado. ¿Cuándo lo mediste? Por ejemplo: pechuga 58 a las 14:05.
reading-too-many = Una lectura por sitio: pechuga, muslo, horno o ahumador. Por ejemplo: pechuga 58, muslo 64, horno 165.
reading-loose-number = No sé qué significa { $given } ahí. Dilo con su unidad: { units-example-bird }, 11 personas, { units-example-setting }.
reading-two-weights = Dos aves de distinto peso: planeo una cada vez, primero la de { $heavy }. Cuando ya esté, dime la de { $light }.
